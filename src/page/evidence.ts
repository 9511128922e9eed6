import type { Results } from '../run.ts';
import { coefficients, fittedTo } from '../tables/adaptation.ts';
import { errorsByKind, errsOneWay } from '../tables/errorsByKind.ts';
import { evidence } from '../tables/evidence.ts';
import { kindsOfWork } from '../tables/kindsOfWork.ts';
import {
  adaptationRows,
  bodyRows,
  chainRow,
  curveRows,
  fitRows,
  kneeMuscleRows,
  loweringRow,
  muscleRows,
  repetitionRow,
  rubberRow,
  type TableRow,
} from '../tables/rowsBehind.ts';
import { errorSentence } from './evidenceKinds.ts';
import type { Section } from './report.ts';
import { isRubberEstimate } from './rigWords.ts';
import { newtonMetres, percent } from './words.ts';
import { workSources } from './workAssumptions.ts';

/** Where published sources disagree about something this report rests on. */
export function conflictSection(results: Results): Section {
  const ofTheKnee = results.question.action === 'knee extension' ? kneeConflicts(results) : [];
  return {
    heading: 'Where the evidence disagrees',
    blocks: [{ kind: 'list', items: [...ofTheKnee, ...errorsOf(results), ...conflicts] }],
  };
}

/** Where the model errs one way in studies of work like these programs'. */
function errorsOf({ ranking }: Results): string[] {
  const used = new Set(
    ranking.flatMap(({ program: { program } }) =>
      program.work.flatMap((work) => ('lift' in work ? [work.lift] : [])),
    ),
  );
  const errors = errorsByKind(evidence).filter(errsOneWay);
  return kindsOfWork.flatMap((kind) => {
    const own = errors.filter((one) => one.kind === kind);
    return own.length > 0 && kind.lifts.some((lift) => used.has(lift)) ? [errorSentence(own)] : [];
  });
}

function kneeConflicts({ athlete, anglesDeg }: Results): string[] {
  const { torque } = athlete.groups['knee extension'];
  const at = (deg: number) => torque[anglesDeg.indexOf(deg)] ?? 0;
  const [at20, at110] = [at(20), at(110)];
  return [
    `Knee strength deep against nearly straight: one study found 110° only 42 ± 12 % above 20° (Frontiers in Physiology 2021), another implies about double (Marginson and Eston 2001). The starting curve meets both at their edges; this athlete’s has ${newtonMetres(at110)} at 110° and ${newtonMetres(at20)} at 20°, ${percent(at110 / at20 - 1)} more. The peak lies anywhere from 57° to 80° across studies.`,
    'Full against part range on a leg machine: Valamatos 2018 and McMahon 2014 disagree on how much part-range work gives deep in the knee.',
    'Lever of the quadriceps tendon between 20° and 70° of flexion: 32 to 54 mm by method; the middle is used.',
  ];
}

/** Conflicts that touch any forecast. */
const conflicts: readonly string[] = [
  'Gain in the trained range: groups that squat a part of the range gained more in it than full squatters in four studies (Rhea 2016, Kubo 2019, Bloomquist 2013, Hartmann 2012), less in two (Pallarés 2020, Martínez-Cava 2019, the latter bench press). The model takes the side of the four for short ranges; for half squats and the bench press it finds both groups nearly alike.',
  'Quarter squats and holds: Rhea 2016 found good transfer, Hartmann 2012 a loss of holding force at the trained angle. The model predicts no loss.',
  'Size of the local gain: activation was seen to rise 7 % while torque rose 30 % (Kubo 2010); the model’s “neural drive” holds both.',
  'Neural drive by angle: rising (Kubo 2004), falling (Babault 2003) or flat (Kooistra 2007) toward flexion: taken as flat.',
  'Growth from long-length work is large in small studies of untrained people and near nil in large ones of trained people: the model’s trained people gain less in proportion.',
  'Strength while lowering: 0.9 to 1.2 of that in a hold.',
];

/** The few words of the trade that a reader may not share. */
export function wordSection(): Section {
  return {
    heading: 'Words',
    blocks: [
      {
        kind: 'list',
        items: [
          'Torque: turning effect of a force about a joint, in newton metres (N·m).',
          'Effort: torque asked over the largest torque possible at that angle.',
          `Effective set: 24 seconds of full effort at one angle, as in six slow repetitions; easier work counts for much less (half the effort for about ${percent(0.5 ** coefficients.driveEffortPower)}), and so does work where the muscle is short. A set of squats is hard only near its deepest point, so it counts as a small part of one.`,
          'Neural drive (drive): the part of the gain that stays near the angles trained. It begins as fuller activation but grows larger than activation alone allows; what else is in it (coordination, force per area) is not told apart here.',
          'Regional growth (growth): added muscle area, in the part of the muscle that was loaded.',
          'Sarcomeres in series (series): longer fibres, which move strength toward longer muscle.',
          'Heaviest single: the most that can be lifted once (1RM) over a stated range.',
        ],
      },
    ],
  };
}

/** The hip, the knee and the ankle carry most lifts, whatever the target. */
const legActions = ['hip extension', 'knee extension', 'ankle plantarflexion'] as const;

/** Tables any forecast rests on: the body, every lift’s muscles, drive, growth and practice. */
const rows: readonly TableRow[] = [
  bodyRows.masses,
  bodyRows.lengths,
  ...muscleRows,
  loweringRow,
  repetitionRow,
  ...[
    adaptationRows.drive,
    adaptationRows.growth,
    adaptationRows.series,
    adaptationRows.practice,
  ].flatMap(([first]) => (first ? [first] : [])),
];

/** Tables of chains and rubber, where a program uses them. */
function rigRows({ scenario, ranking }: Results): TableRow[] {
  const lifts = ranking.flatMap(({ program }) =>
    program.program.work.filter((work) => work.kind === 'lift'),
  );
  const linked = lifts.some(({ chains = '' }) => 'link' in (scenario.chains[chains]?.weight ?? {}));
  const rubber = lifts.some((work) => isRubberEstimate(work, scenario));
  return [...(linked ? [chainRow] : []), ...(rubber ? [rubberRow] : [])];
}

/** Every table the numbers rest on, with how it is known. */
export function sourceSection(results: Results): Section {
  const { question, scenario } = results;
  const { reference } = scenario.subject;
  const actions = new Set([question.action, ...legActions]);
  const shown = [
    ...[...actions].flatMap((action) => curveRows(action, reference)),
    ...(results.fits.length > 0 ? fitRows : []),
    ...(question.action === 'knee extension' ? kneeMuscleRows : []),
    ...rows,
    ...workSources(results),
    ...rigRows(results),
  ];
  return {
    heading: 'Sources',
    blocks: [
      {
        kind: 'text',
        text: `Fitted rows rest on ${fittedTo}.`,
      },
      {
        kind: 'text',
        text: 'Read: seen in the source or a page quoting it. Recalled: from memory, to be checked. Derived: arithmetic on others. Fitted: estimated by this project from the studies named. Prior: a judgement, nothing is published.',
      },
      {
        kind: 'table',
        columns: [
          { head: 'what', align: 'left' },
          { head: 'known', align: 'left' },
          { head: 'source', align: 'left' },
        ],
        rows: shown.map(({ what, known, source }) => [what, known, source]),
      },
    ],
  };
}
