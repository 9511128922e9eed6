import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { startingScenario } from '../src/notebook/startingScenario.ts';
import { differences, withSaid } from '../src/notebook/text/differences.ts';
import { readSource } from '../src/notebook/text/source.ts';
import { comparePage } from '../src/page/comparePage.ts';
import { renderTerminal } from '../src/page/terminal.ts';
import { displayWidth } from '../src/page/wrap.ts';
import { type Compared, compare } from '../src/questions/compare.ts';
import { run } from '../src/run.ts';

function source(text: string, file = 'f.yaml') {
  const found = readSource(file, text).source;
  if (!found) throw new Error('cannot be read');
  return found;
}

const walked = (a: string, b: string) =>
  differences(source(a), source(b)).map((one) => [one.place, one.a, one.b]);

describe('differences between two files', () => {
  it('are none where only comments, layout, quotes or the order of names differ', () => {
    const a = 'athlete: { mass: 70 kg, code: A }\ntests:\n  - { lift: back squat }\n';
    const b =
      '# note\ntests: [{ lift: "back squat" }]\nathlete:\n  code: A # hers\n\n  mass: 70 kg\n';
    expect(walked(a, b)).toEqual([]);
  });

  it('are found by name and by position in lists, each with its lines', () => {
    const a = 'programs:\n  deep squat:\n    work: [{ to: 90 deg, sets: 4 }, { to: 60 deg }]\n';
    const b =
      'programs:\n  deep squat:\n    work:\n      - { sets: 4, to: 100 deg }\n  holds: {}\n';
    expect(walked(a, b)).toEqual([
      ['programs.deep squat.work.1.to', { text: '90 deg', line: 3 }, { text: '100 deg', line: 4 }],
      ['programs.deep squat.work.2', { text: '{ to: 60 deg }', line: 3 }, undefined],
      ['programs.holds', undefined, { text: '{}', line: 5 }],
    ]);
  });

  it('come in the order of computation, whatever the order of writing', () => {
    const file = (v: number) =>
      `title: ${v}\ncells: { c: ${v} }\nprograms: { p: ${v} }\ntests: [${v}]\nathlete: { mass: ${v} }\n`;
    expect(walked(file(1), file(2)).map(([place]) => place)).toEqual([
      'athlete.mass',
      'tests.1',
      'programs.p',
      'cells.c',
      'title',
    ]);
  });

  it('say of a text where there was a group, and of a long one only its beginning', () => {
    const [found] = walked('a: { b: 1 }', `a: ${'long '.repeat(30)}`);
    expect(found?.[1]).toEqual({ text: '{ b: 1 }', line: 1 });
    expect(Object(found?.[2]).text).toMatch(/^long .{50,55}…$/);
  });

  it('put one by one into the first file make the second', () => {
    const a = 'x: 1\nlist: [{ p: 1 }, 2, 3]\ngone: { q: "5" }\n';
    const b = 'x: 2\nlist: [{ p: 2, r: 1 }]\nnew: [1, { s: "= a" }]\n';
    const other = source(b);
    const paths = differences(source(a), other).map(({ path }) => path);
    // Later list entries first, as they are taken out.
    const made = paths.reverse().reduce((file, path) => withSaid(file, other, path), source(a));
    expect(made.value).toEqual(other.value);
  });
});

const heavier = startingScenario.replace('mass: 65 kg', 'mass: 72 kg');

async function compared(b: string, a = startingScenario): Promise<Compared> {
  const found = await compare(source(a, 'a.yaml'), source(b, 'b.yaml'));
  if (!found.compared) throw new Error(JSON.stringify(found.problems));
  return found.compared;
}

const gains = async (text: string) => {
  const { results } = await run('f.yaml', text);
  return new Map(
    results?.ranking.map(({ program }) => [program.name, program.landing.meanGain]) ?? [],
  );
};

const causeOf = (found: Compared) => {
  const block = comparePage(found).sections[1]?.blocks[0];
  return block?.kind === 'text' ? block.text : '';
};

describe('compare', () => {
  it('gives the answers that each file gives by itself', async () => {
    const b = heavier.replace('effort: 90 %', 'effort: 80 %');
    const [inA, inB, found] = [await gains(startingScenario), await gains(b), await compared(b)];
    expect(found.programs).toHaveLength(3);
    for (const one of found.programs)
      expect([one.a, one.b]).toEqual([inA.get(one.name), inB.get(one.name)]);
  });

  it('names the one place that moves the best program, after those that do not', async () => {
    const b = startingScenario
      .replace('code: AB-01', 'code: AB-02')
      .replace('effort: 90 %', 'effort: 80 %')
      .replace('bar to body: =', 'bar over body: =');
    const { cause, ...found } = await compared(b);
    expect(cause?.watched.name).toBe('long holds');
    expect(cause?.idle.map(({ difference }) => difference.place)).toEqual(['athlete.code']);
    expect(cause?.first?.difference.place).toBe('programs.long holds.work.1.effort');
    // The only place that counts makes the whole change.
    expect(cause?.first?.gain).toBe(cause?.watched.b);
    expect(causeOf({ ...found, ...(cause ? { cause } : {}) })).toMatch(
      /^The target gain of "long holds" changes by -\d\.\d points; programs\.long holds\.work\.1\.effort alone \(90 % → 80 %\) makes -\d\.\d of them\. Tried alone without effect: athlete\.code\. Not tried: 2 later places\.$/,
    );
  });

  it('follows a place through programs that are like another', async () => {
    const found = await compared(startingScenario.replace('load: 78 %', 'load: 60 %'));
    expect(found.cause?.first?.difference.place).toBe('programs.deep squat.work.1.load');
    expect(found.differences).toHaveLength(1);
  });

  it('explains a cell where no gain changed', async () => {
    const found = await compared(
      startingScenario.replace('110 deg) / mass', '110 deg) / (2 * mass)'),
    );
    expect(causeOf(found)).toMatch(
      /^The cell "bar to body" goes from 1\.23 to 0\.615; cells\.bar to body alone \(= best\("back squat", 110 deg\) \/ mass → .*\) makes it 0\.615\.$/,
    );
  });

  it('says so when no place moves the number alone', async () => {
    // Chains count only where they are used, and can be used only where they are described.
    const b = startingScenario
      .replace('target:', 'chains: { heavy: { weighs: 30 kg/m, length: 1.8 m } }\ntarget:')
      .replace('load: 78 %', 'load: 78 %, chains: heavy');
    const { cause, ...found } = await compared(b);
    expect(cause?.first).toBeUndefined();
    expect(causeOf({ ...found, ...(cause ? { cause } : {}) })).toMatch(
      /^The target gain of ".*" changes by [+-]\d+\.\d points, but none of the 2 places that differ moves it alone\. Tried alone without effect: chains\. Cannot be changed alone: programs\.deep squat\.work\.1\.chains\.$/,
    );
  });

  it('says that nothing that counts differs', async () => {
    const found = await compared(startingScenario.replace('title: Stronger', 'title: Strong'));
    expect(found.differences.map(({ place }) => place)).toEqual(['title']);
    expect(causeOf(found)).toBe(
      'Nothing that counts differs: every target gain and every cell comes to the same, as far as it is shown.',
    );
  });

  it('gives the problems of both files', async () => {
    const bad = startingScenario.replace('170 cm', '170 kg');
    const { problems } = await compare(source(bad, 'a.yaml'), source(bad, 'HEAD:b.yaml'));
    expect(problems?.map(({ at }) => at?.file)).toEqual(['a.yaml', 'HEAD:b.yaml']);
  });

  it('is shown whole within 40 and 80 columns', async () => {
    const found = await compared(
      heavier.replace('  long holds:', '  more holds:').replace('bar to body', 'bar over body'),
    );
    for (const width of [40, 80]) {
      const lines = renderTerminal(comparePage(found), width).split('\n');
      expect(Math.max(...lines.map(displayWidth))).toBeLessThanOrEqual(width);
      const text = lines.join(' ').replace(/\s+/g, ' ');
      expect(text).toContain('a is a.yaml; b is b.yaml.');
      expect(text).toMatch(
        /The best program is "long holds" in a \(\+\d+ %\) and "more holds" in b \(\+\d+ %\);/,
      );
      expect(text).toContain('athlete.mass: 65 kg (a, line 9); 72 kg (b, line 9)');
      expect(text).toContain('not there');
    }
  });

  it('gives what README shows', async () => {
    const file = 'scenarios/ski-deep-range.yaml';
    const text = readFileSync(file, 'utf8');
    const changed = text
      .replace('mass: 63.5 kg', 'mass: 66 kg')
      .replace('effort: 90 %', 'effort: 85 %');
    const found = await compare(source(text, `HEAD:${file}`), source(changed, file));
    const page = found.compared ? renderTerminal(comparePage(found.compared), 80) : '';
    const readme = readFileSync('README.md', 'utf8').split('npx torqueleaf compare')[1] ?? '';
    const shown = /```text\n([\s\S]*?)\n```/.exec(readme)?.[1]?.split('\n\n') ?? [];
    expect(shown).toHaveLength(4);
    for (const part of shown) expect(page).toContain(`\n${part}\n`);
  });
});
