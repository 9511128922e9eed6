/**
 * A sheet of 10,000 formulas that depend on one another: time to recalculate after one change, beside
 * a general spreadsheet engine on the same sheet. The engine is not a dependency (its licence is the
 * GPL, it is never shipped): `npm install --no-save hyperformula@3.5.0`, then run
 * `node --import tsx test/bench/sheet.ts`. Rounds are interleaved; the ratio is what counts.
 */
import { library } from '../../src/notebook/formula/library.ts';
import { loadParser } from '../../src/notebook/formula/mathjsParser.ts';
import { parseFormula } from '../../src/notebook/formula/parseFormula.ts';
import { Sheet } from '../../src/notebook/formula/sheet.ts';

const count = 10_000;
const rounds = 11;

/** Each formula uses the one before and the one half way back. */
const halfway = (i: number) => Math.floor(i / 2);

async function ownSheet() {
  const parse = await loadParser();
  const formulas = Array.from({ length: count }, (_, i) => {
    const text = i === 0 ? '1' : `0.5 * c${i - 1} + 0.25 * c${halfway(i)} + 1`;
    const { expression } = parseFormula(text, parse);
    if (!expression) throw new Error(text);
    return { name: `c${i}`, expression };
  });
  const functions = new Map(library.map((entry) => [entry.name, entry]));
  const start = performance.now();
  const sheet = new Sheet(formulas, { named: () => undefined, names: [], functions });
  sheet.computeAll();
  console.log(
    `own: ${count} formulas compiled and computed in ${(performance.now() - start).toFixed(1)} ms`,
  );
  return {
    change: (value: number) => sheet.change('c0', value),
    last: () => {
      const outcome = sheet.outcome(`c${count - 1}`);
      return 'value' in outcome ? Number(outcome.value) : Number.NaN;
    },
  };
}

interface Engine {
  buildFromArray(
    rows: unknown[][],
    options: object,
  ): {
    setCellContents(at: object, value: unknown): void;
    getCellValue(at: object): unknown;
  };
}

async function engineSheet() {
  const name = 'hyperformula';
  const loaded: { HyperFormula?: Engine; default?: { HyperFormula?: Engine } } | undefined =
    await import(name).catch(() => undefined);
  const engine = loaded?.HyperFormula ?? loaded?.default?.HyperFormula;
  if (!engine) return undefined;
  const rows = Array.from({ length: count }, (_, i) => [
    i === 0 ? 1 : `=0.5*A${i}+0.25*A${halfway(i) + 1}+1`,
  ]);
  const sheet = engine.buildFromArray(rows, { licenseKey: 'gpl-v3', maxRows: count + 1 });
  return {
    change: (value: number) => sheet.setCellContents({ sheet: 0, row: 0, col: 0 }, [[value]]),
    last: () => Number(sheet.getCellValue({ sheet: 0, row: count - 1, col: 0 })),
  };
}

const own = await ownSheet();
const engine = await engineSheet();
const spent: Record<string, number[]> = { own: [], engine: [] };
for (let round = 1; round <= rounds; round++)
  for (const [name, sheet] of Object.entries({ own, engine })) {
    if (!sheet) continue;
    const start = performance.now();
    sheet.change(round);
    spent[name]?.push(performance.now() - start);
  }
const median = (name: string) =>
  [...(spent[name] ?? [])].sort((a, b) => a - b)[Math.floor(rounds / 2)];
console.log(`own: ${median('own')?.toFixed(2)} ms to recalculate all after one change`);
if (engine) {
  const ratio = (median('engine') ?? 0) / (median('own') ?? 1);
  console.log(`engine: ${median('engine')?.toFixed(2)} ms, ${ratio.toFixed(1)} × own`);
  console.log(
    `the same last value: ${Math.abs(own.last() - engine.last()) < 1e-9 * Math.abs(own.last())}`,
  );
} else console.log('the general engine is not installed; see the comment of this file');
