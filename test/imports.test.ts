import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';

/** What any file may import. */
const allowedToAll = ['numeric/degrees.ts'];

/** Which folder may import which; DEVELOPERS.md says why. `type` entries allow types only. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  'main.ts': ['commands'],
  commands: [
    'run.ts',
    'questions',
    'page',
    'notebook/text/problem.ts',
    'type notebook/text/source.ts',
    'notebook/text/mostBytes.ts',
    'notebook/text/readWithIncludes.ts',
    'notebook/formula/cellText.ts',
    'type notebook/formula/parseFormula.ts',
    'notebook/startingScenario.ts',
    'notebook/scenarioJsonSchema.ts',
  ],
  questions: [
    'run.ts',
    'stages',
    'functions',
    'notebook',
    'numeric',
    'mechanics',
    'physiology',
    'inference',
    'tables',
  ],
  'run.ts': [
    'stages',
    'problems',
    'functions',
    'notebook',
    'mechanics',
    'physiology',
    'inference',
    'tables',
  ],
  stages: [
    'type run.ts',
    'functions',
    'problems',
    'notebook',
    'numeric',
    'mechanics',
    'physiology',
    'inference',
    'tables',
  ],
  functions: [
    'type run.ts',
    'type stages',
    'notebook',
    'mechanics',
    'physiology',
    'inference',
    'tables',
  ],
  problems: ['type notebook', 'type physiology', 'inference', 'mechanics', 'tables'],
  notebook: ['tables', 'mechanics/lift.ts'],
  mechanics: ['numeric'],
  physiology: ['numeric', 'tables', 'mechanics'],
  inference: ['numeric', 'tables', 'mechanics', 'physiology'],
  numeric: [],
  tables: ['type mechanics'],
  page: [
    'type run.ts',
    'type questions',
    'type stages',
    'type notebook',
    'notebook/formula/cellText.ts',
    'type inference',
    'type mechanics',
    'type physiology',
    'physiology/shortfall.ts',
    'tables',
  ],
};

interface Import {
  readonly from: string;
  readonly to: string;
  readonly typeOnly: boolean;
}

function sources(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return sources(path);
    return path.endsWith('.ts') && !path.endsWith('.d.ts') ? [path] : [];
  });
}

const files = sources('src');
const imports: readonly Import[] = files.flatMap((path) => {
  const text = readFileSync(path, 'utf8');
  const statements = [
    ...text.matchAll(/^(?:import|export)\s+(type\s)?([^;]*?)from\s+'(\.[^']+)'/gms),
  ].map(([, whole, names = '', to = '']) => {
    const listed = names
      .replace(/[{}]/g, '')
      .split(',')
      .map((name) => name.trim());
    const typeOnly =
      whole !== undefined || listed.filter(Boolean).every((n) => n.startsWith('type '));
    return { to, typeOnly };
  });
  const dynamic = [...text.matchAll(/import\('(\.[^']+)'\)/g)].map(([, to = '']) => ({
    to,
    typeOnly: false,
  }));
  return [...statements, ...dynamic].map(({ to, typeOnly }) => ({
    from: path.slice(4),
    to: normalize(join(dirname(path), to)).slice(4),
    typeOnly,
  }));
});

const folderOf = (path: string) => (path.includes('/') ? (path.split('/')[0] ?? '') : path);

function isAllowed({ from, to, typeOnly }: Import): boolean {
  const [home, away] = [folderOf(from), folderOf(to)];
  if (home === away && home !== from) return true;
  return [...allowedToAll, ...(allowed[home] ?? [])].some((rule) => {
    const name = rule.replace('type ', '');
    return (name === away || name === to) && (typeOnly || !rule.startsWith('type '));
  });
}

describe('imports', () => {
  it('follow the table', () => {
    const wrong = imports.filter((entry) => !isAllowed(entry));
    expect(wrong.map(({ from, to }) => `${from} → ${to}`)).toEqual([]);
  });

  it('form no cycle', () => {
    const next = new Map<string, string[]>();
    for (const { from, to, typeOnly } of imports)
      if (!typeOnly) next.set(from, [...(next.get(from) ?? []), to]);
    const done = new Set<string>();
    const visit = (path: string, trail: readonly string[]): void => {
      if (trail.includes(path)) throw new Error(`cycle: ${[...trail, path].join(' → ')}`);
      if (done.has(path)) return;
      for (const to of next.get(path) ?? []) visit(to, [...trail, path]);
      done.add(path);
    };
    expect(() => {
      for (const path of next.keys()) visit(path, []);
    }).not.toThrow();
  });

  it('are seen by this test: it reads at least one import of most files', () => {
    expect(imports.length).toBeGreaterThan(files.length);
  });
});
