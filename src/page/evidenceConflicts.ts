import { adaptation } from '../tables/adaptation.ts';
import type { EvidenceResults } from '../tables/evidenceResults.ts';
import type { Section } from './report.ts';
import { percent } from './words.ts';

/** Which of a study's findings a conflict is about: file, program, words of the outcome. */
type Key = readonly [study: string, program: string, what: string];

/**
 * Where published findings pull in different directions, and which side the model takes: each with
 * the findings that show it, predicted without their own study.
 */
const conflicts: readonly {
  readonly words: string;
  readonly keys: readonly Key[];
}[] = [
  {
    words:
      'Quarter squats and holding force: Hartmann found less force in a hold at the trained angle afterwards, Rhea and Bloomquist large gains over the trained range. The model predicts no loss anywhere: it takes the side of the gains and is wrong for Hartmann’s hold.',
    keys: [
      ['hartmann-2012', 'quarter squat', 'hold, leg press 60°'],
      ['rhea-2016', 'quarter squat', 'single, back squat 0–60°'],
      ['bloomquist-2013', 'shallow squat', 'single, back squat 0–60°'],
    ],
  },
  {
    words:
      'Gain in the own range of those who train a part of it, against those who train the whole: larger in Rhea, Kubo, Bloomquist and Hartmann, smaller in Pallarés (half squats) and Martínez-Cava (bench press). The model takes the side of the first four where a quarter of the range was squatted; for half squats (Rhea, Kubo, Pallarés) and the bench press it finds the two groups nearly alike.',
    keys: [
      ['rhea-2016', 'quarter squat', 'single, back squat 0–60°'],
      ['rhea-2016', 'full squat', 'single, back squat 0–60°'],
      ['rhea-2016', 'half squat', 'single, back squat 0–90°'],
      ['rhea-2016', 'full squat', 'single, back squat 0–90°'],
      ['kubo-2019', 'half squat', 'single, back squat 0–90°'],
      ['kubo-2019', 'full squat', 'single, back squat 0–90°'],
      ['bloomquist-2013', 'shallow squat', 'single, back squat 0–60°'],
      ['bloomquist-2013', 'deep squat', 'single, back squat 0–60°'],
      ['hartmann-2012', 'quarter squat', 'single, back squat 0–60°'],
      ['hartmann-2012', 'deep squat', 'single, back squat 0–60°'],
      ['pallares-2020', 'half squat', 'single, back squat 0–90°'],
      ['pallares-2020', 'full squat', 'single, back squat 0–90°'],
      ['martinez-cava-2019', 'top third', 'single, bench press 35–80°'],
      ['martinez-cava-2019', 'full range', 'single, bench press 35–80°'],
    ],
  },
  {
    words:
      'Growth from work at long length in trained people: large for the triceps in Goto (48.7 %, hardly to be believed of trained men in eight weeks), less with the arm behind than in front of the body in Zabaleta-Korta. The model gives trained people half of what untrained ones gain, at every length; it does not see the shoulder and takes neither side.',
    keys: [
      ['goto-2019', 'partial range', 'area, triceps'],
      ['zabaleta-korta-2023', 'incline curl', 'thickness, elbow flexors at 50 %'],
      ['zabaleta-korta-2023', 'preacher curl', 'thickness, elbow flexors at 50 %'],
    ],
  },
  {
    words:
      'Where growth leads along the muscle: at both ends in Narici, distally after long-length work in McMahon and Noorkõiv, proximally in Maeo’s hamstrings. The model tilts the knee extensors’ growth distally with length, and lets other muscles grow evenly.',
    keys: [
      ['narici-1996', 'leg extensions', 'area, quadriceps, proximal'],
      ['narici-1996', 'leg extensions', 'area, quadriceps, middle'],
      ['narici-1996', 'leg extensions', 'area, quadriceps, distal'],
      ['mcmahon-2014-lengths', 'lengthened range', 'area, vastus lateralis at 25 %'],
      ['mcmahon-2014-lengths', 'lengthened range', 'area, vastus lateralis at 75 %'],
    ],
  },
  {
    words: `Fibre length and strength: fibres grew by a quarter in McMahon’s long-range group and not at all in Alegre’s, whose strongest angle moved most. The model lengthens fibres by lowering and by work at long length, and lets ${percent(adaptation.seriesEffect.value)} of what long work adds and ${percent(adaptation.loweringEffect.value)} of what lowering adds move torque (after Nordic lowering Pincheira found longer sarcomeres, not more of them): below McMahon’s fibres, far below Alegre’s shift.`,
    keys: [
      ['mcmahon-2014', 'long range', 'fibre length, vastus lateralis'],
      ['alegre-2014', 'holds at 90 degrees', 'strongest angle, knee extension'],
    ],
  },
  {
    words:
      'What part-range work gives deep in the knee: little in McMahon, much up to 80° in Valamatos. The model lies above the one and below the other.',
    keys: [
      ['mcmahon-2014', 'short range', 'hold, knee extension 75°'],
      ['mcmahon-2014', 'short range', 'hold, knee extension 90°'],
      ['valamatos-2018', 'partial range', 'hold, knee extension 75°'],
      ['valamatos-2018', 'partial range', 'hold, knee extension 90°'],
    ],
  },
];

/** The conflicts in words, each with the findings behind it. */
export function conflictsOfEvidence(results: EvidenceResults): Section {
  return {
    heading: 'Where the studies disagree, and which side the model takes',
    blocks: conflicts.flatMap(({ words, keys }) => [
      { kind: 'text', text: words } as const,
      {
        kind: 'table',
        columns: [
          { head: 'study', align: 'left' },
          { head: 'group', align: 'left' },
          { head: 'what', align: 'left' },
          { head: 'predicted', align: 'right' },
          { head: 'observed', align: 'right' },
        ],
        rows: keys.map((key) => rowOf(results, key)),
      } as const,
    ]),
  };
}

function rowOf({ studies }: EvidenceResults, [name, program, what]: Key): string[] {
  const groups = studies.find((study) => study.name === name)?.groups;
  const group = groups?.find((one) => one.program === program);
  const outcome = group?.outcomes.find((one) => one.what === what);
  if (!outcome) throw new Error(`no finding ${name}, ${program}, ${what}`);
  const shown = (value: number | undefined) => (value === undefined ? '' : value.toFixed(1));
  return [name, program, what, shown(outcome.predicted), shown(outcome.observed)];
}
