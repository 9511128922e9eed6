import type { ProgramResult, Results } from '../run.ts';
import { chartFrame } from './chartFrame.ts';
import { muscleBlocks } from './muscleBlocks.ts';
import type { Block, Section } from './report.ts';
import { strongest, strongestCell } from './strongestAngle.ts';
import { torqueSection } from './torqueSection.ts';
import { rangeDegrees, signedPercent } from './words.ts';

/** Programs drawn in one chart: more curves than this cannot be told apart. */
const drawn = 4;

/** What gains are split between. */
export const causesInWords =
  'Drive: the gain that stays near the angles trained. Growth: more muscle where it was loaded. Series: longer fibres, which move strength toward longer muscle.';

/** Where the gains land (in per cent, then in newton metres) and what they are owed to. */
export function gainSections(results: Results): Section[] {
  return [gainSection(results), torqueSection(results), whySection(results)];
}

/** Chart and table of the gains over angles. */
export function gainSection(results: Results): Section {
  const programs = results.ranking.map(({ program }) => program);
  return {
    heading: 'Where the gains land',
    blocks: [
      { kind: 'text', text: chartSentence(programs, results) },
      { kind: 'chart', chart: gainChart(programs.slice(0, drawn), results) },
      {
        kind: 'table',
        columns: [
          { head: 'program', align: 'left' },
          ...(programs[0]?.bands ?? []).map((band) => ({
            head: rangeDegrees(band.from, band.to),
            align: 'right' as const,
          })),
        ],
        rows: programs.map((program) => [
          program.name,
          ...program.bands.map(({ gain }) => signedPercent(gain)),
        ]),
      },
    ],
  };
}

/** What the gains are owed to. */
export function whySection(results: Results): Section {
  const programs = results.ranking.map(({ program }) => program);
  return {
    heading: 'Why',
    blocks: [
      {
        kind: 'text',
        text: `Mean gain inside ${rangeDegrees(results.question.target.from, results.question.target.to)}, split between what causes it (a loss counts against its cause). ${causesInWords} ${before(programs)}`,
      },
      whyTable(programs),
      ...costOfLength(programs),
      ...muscleBlocks(results),
    ],
  };
}

/** Where longer fibres cost torque in the target, which reads like a mistake. */
function costOfLength(programs: readonly ProgramResult[]): Block[] {
  const costs = programs.filter(
    ({ targetShares, muscles }) =>
      (targetShares.get('sarcomeres in series') ?? 0) < -noticed &&
      muscles.some(({ isHome, fibre }) => isHome && fibre > noticed),
  );
  if (costs.length === 0) return [];
  const text =
    'Where series is below zero although fibres grow longer, the muscle works below its best length at these angles: longer fibres make it shorter still against that length.';
  return [{ kind: 'text', text }];
}

/** Shares that print as other than nothing. */
const noticed = 0.001;

/** Where the athlete is strongest, the same before any program. */
function before([first]: readonly ProgramResult[]): string {
  if (!first) return '';
  const { peakBefore, levelBefore } = first.landing;
  return `Before training the athlete is ${strongest([peakBefore, levelBefore])}.`;
}

function chartSentence(programs: readonly ProgramResult[], { question }: Results): string {
  const [best] = programs;
  const top = best?.bands.reduce((a, b) => (b.gain > a.gain ? b : a));
  const shown = programs.length > drawn ? ` The first ${drawn} programs are drawn.` : '';
  if (!best || !top) return 'Nothing to draw.';
  return `"${best.name}" gains most at ${rangeDegrees(top.from, top.to)} (${signedPercent(top.gain)}); the target is ${rangeDegrees(question.target.from, question.target.to)}.${shown}`;
}

function gainChart(programs: readonly ProgramResult[], results: Results) {
  const { shown, xDeg, band } = chartFrame(results);
  return {
    title: 'gain of maximal torque (%)',
    x: xDeg,
    series: programs.map(({ name, ratio }) => ({
      name,
      y: shown.map(({ i }) => 100 * ((ratio[i] ?? 1) - 1)),
    })),
    band,
  };
}

function whyTable(programs: readonly ProgramResult[]) {
  return {
    kind: 'table' as const,
    columns: [
      { head: 'program', align: 'left' as const },
      { head: 'drive', align: 'right' as const },
      { head: 'growth', align: 'right' as const },
      { head: 'series', align: 'right' as const },
      { head: 'together', align: 'right' as const },
      { head: 'strongest at', align: 'right' as const },
    ],
    rows: programs.map(({ name, targetShares, landing }) => [
      name,
      ...[...targetShares.values()].map((share) => signedPercent(share, 1)),
      signedPercent(landing.meanGain, 1),
      strongestCell([landing.peakAfter, landing.levelAfter]),
    ]),
  };
}
