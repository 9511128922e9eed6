import type { EvidenceOutcome, EvidenceResults, EvidenceStudy } from '../tables/evidenceResults.ts';
import type { Block, Column, Section } from './report.ts';
import { plural } from './words.ts';

const left = (head: string): Column => ({ head, align: 'left' });
const right = (head: string): Column => ({ head, align: 'right' });

type Group = EvidenceStudy['groups'][number];

interface Placed {
  readonly study: EvidenceStudy;
  readonly group: Group;
  readonly outcome: EvidenceOutcome;
}

function placedOf(studies: readonly EvidenceStudy[]): Placed[] {
  return studies.flatMap((study) =>
    study.groups.flatMap((group) => group.outcomes.map((outcome) => ({ study, group, outcome }))),
  );
}

const unit = ({ family }: EvidenceOutcome) => (family === 'optimum' ? '°' : '');

/** Without decimals, and no zero below zero. */
const whole = (value: number) => String(Math.round(value) + 0);

/** Predicted beside observed, one section a study. */
export function studySections({ studies }: EvidenceResults): Section[] {
  return studies.flatMap((study) => {
    const rows = placedOf([study]).filter(
      ({ outcome }) => outcome.predicted !== undefined && outcome.observed !== undefined,
    );
    if (rows.length === 0) return [];
    const doubts = [...new Set(rows.flatMap(({ outcome }) => outcome.doubt ?? []))];
    return [
      {
        heading: study.title,
        blocks: [
          { kind: 'text', text: groupWords(study) },
          findingTable(rows),
          ...(doubts.length > 0 ? [{ kind: 'list', items: doubts } as const] : []),
        ],
      },
    ];
  });
}

function groupWords({ groups, amplitude }: EvidenceStudy): string {
  const each = groups.map(
    ({ program, people, trained }) =>
      `${program} (${people === undefined ? 'number of people not given' : plural(people, 'person', 'people')}, ${trained ? 'trained' : 'untrained'})`,
  );
  return `${each.join('; ')}. Gains over those of a middle study, by the fit: ${amplitude.toFixed(2)} times.`;
}

function findingTable(rows: readonly Placed[]): Block {
  return {
    kind: 'table',
    columns: [
      left('group'),
      left('what'),
      right('predicted'),
      right('80 % interval'),
      right('observed'),
      right('error'),
      right('fitted'),
    ],
    rows: rows.map(({ group, outcome }) => {
      const {
        what,
        predicted = 0,
        low = 0,
        high = 0,
        observed = 0,
        error = 0,
        fitted = 0,
      } = outcome;
      const inside = observed >= low && observed <= high ? '' : ' outside';
      return [
        group.program,
        what,
        `${predicted.toFixed(1)}${unit(outcome)}`,
        `${whole(low)} to ${whole(high)}${unit(outcome)}${inside}`,
        `${observed.toFixed(1)}${unit(outcome)}`,
        `${error.toFixed(1)}${outcome.errorTaken ? '*' : ''}`,
        fitted.toFixed(1),
      ];
    }),
  };
}

/** Findings that a source gives only by their direction, predicted without their study. */
export function directionSection({ studies }: EvidenceResults): Section {
  const rows = placedOf(studies).filter(
    ({ outcome }) => outcome.found !== undefined && outcome.predicted !== undefined,
  );
  return {
    heading: 'Findings told only by their direction',
    blocks: [
      {
        kind: 'text',
        text: 'The source gives no size: fitted with working values (a clear rise of strength as 14 ± 6 points, no clear change as 2 ± 6), predicted here without the study, not scored. "Clear" is the source’s own test, which a small group passes only with a large change.',
      },
      {
        kind: 'table',
        columns: [left('study'), left('group'), left('what'), right('predicted'), left('found')],
        rows: rows.map(({ study, group, outcome }) => [
          study.name,
          group.program,
          outcome.what,
          `${(outcome.predicted ?? 0).toFixed(1)}${unit(outcome)}`,
          outcome.found ?? '',
        ]),
      },
    ],
  };
}

/** Where a value stands above although the model lacks what the study is about. */
const notToldApart: readonly string[] = [
  'Muscles other than the knee extensors grow evenly along their length (places in Maeo 2021, Sato 2021, Zabaleta-Korta 2023), and what the shoulder does to the length of biceps and triceps is not known to the model (Maeo 2023, Zabaleta-Korta 2023, Goto 2019).',
  'The strongest angle moves the right way but far less than was found (Alegre 2014, Brughelli 2010, Ullrich 2009, Aquino 2010). Tried by hand, fibres as long as measured would move it by up to 4° if they acted in full; studies of strength and size leave them only part of that.',
  'Holds of the calf at one angle gain far too widely: Kitai 1989 found a clear rise at three angles near the trained one and none at six others, the model gives much the same at all.',
  'Set speeds gain as moving work does, whatever the speed; age does not enter (Reeves 2004 and 2009).',
];

/** What the model has no value for, and why. */
export function unpredictedSection({ studies }: EvidenceResults): Section {
  const rows = placedOf(studies).filter(({ outcome }) => outcome.because !== undefined);
  const empty = studies.flatMap((study) =>
    study.groups
      .filter(({ outcomes }) => outcomes.length === 0)
      .map(({ program }) => [study.name, program, 'no finding', '', 'the source gives no values']),
  );
  return {
    heading: 'Not predicted',
    blocks: [
      { kind: 'text', text: 'Predicted above, but without what would tell the groups apart:' },
      { kind: 'list', items: notToldApart },
      {
        kind: 'table',
        columns: [left('study'), left('group'), left('what'), right('observed'), left('why not')],
        rows: [
          ...rows.map(({ study, group, outcome }) => [
            study.name,
            group.program,
            outcome.what,
            outcome.observed === undefined
              ? (outcome.found ?? '')
              : `${outcome.observed.toFixed(1)}${unit(outcome)}`,
            outcome.because ?? '',
          ]),
          ...empty,
        ],
      },
    ],
  };
}

/** Findings kept for the record, with what the model says beside them. */
export function recordSection({ studies }: EvidenceResults): Section {
  const rows = placedOf(studies).filter(({ outcome }) => outcome.record);
  return {
    heading: 'For the record only',
    blocks: [
      {
        kind: 'text',
        text: 'Neither fitted nor scored: means of findings that stand above one by one, and strain days after single bouts.',
      },
      {
        kind: 'table',
        columns: [
          left('study'),
          left('group'),
          left('what'),
          right('model'),
          right('observed'),
          left('why'),
        ],
        rows: rows.map(({ study, group, outcome }) => [
          study.name,
          group.program,
          outcome.what,
          outcome.fitted === undefined ? '' : `${outcome.fitted.toFixed(1)}${unit(outcome)}`,
          `${(outcome.observed ?? 0).toFixed(1)}${unit(outcome)}`,
          outcome.doubt ?? '',
        ]),
      },
    ],
  };
}
