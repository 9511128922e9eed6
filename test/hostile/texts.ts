import { startingScenario } from '../../src/notebook/startingScenario.ts';
import {
  body,
  escapes,
  many,
  named,
  overrides,
  plain,
  program,
  type Row,
  squat,
  swapped,
  title,
  withCells,
} from './parts.ts';

export const formulas: readonly Row[] = [
  [
    'thousands of cells',
    'compute them all',
    () => withCells(many(9_000, (i) => `  c${i}: = mass * ${i}\n`)),
  ],
  [
    'chain of cells',
    'overflow the stack by cells',
    () => withCells(`${many(9_000, (i) => `  c${i}: = c${i + 1} + 1\n`)}  c9000: = 1\n`),
  ],
  [
    'circle of cells',
    'compute without end',
    () => withCells(many(5_000, (i) => `  c${i}: = c${(i + 1) % 5_000}\n`)),
  ],
  [
    'cells that need all others',
    'a graph with every edge',
    () =>
      withCells(
        many(
          1_500,
          (i) =>
            `  c${i}: = ${i === 0 ? '1' : Array.from({ length: Math.min(i, 100) }, (_, k) => `c${i - k - 1}`).join(' + ')}\n`,
        ),
      ),
  ],
  [
    'unknown names in cells',
    'a slow search for the meant name',
    () => withCells(many(4_000, (i) => `  cell${i}: = cel${i}x + 1\n`)),
  ],
  [
    'large vectors',
    'thousands of long lists',
    () => withCells(many(4_000, (i) => `  c${i}: = (1:2000) * ${i}\n`)),
  ],
  [
    'large vector sums',
    'a billion additions',
    () =>
      withCells(`  x: = 1:2000\n${many(1_500, (i) => `  c${i}: = sum(${'x*'.repeat(140)}x)\n`)}`),
  ],
  [
    'charts of large vectors',
    'draw thousands of charts',
    () => withCells(many(1_000, (i) => `  c${i}: { is: = (1:2000) * ${i}, chart: yes }\n`)),
  ],
  [
    'as many calls as are computed',
    'a search for each of them',
    () => withCells(many(240, (i) => `  c${i}: = best("back squat", ${80 + i / 10} deg)\n`)),
  ],
  [
    'costly questions',
    'a search for each cell',
    () => withCells(many(1_000, (i) => `  c${i}: = best("back squat", ${80 + i / 40} deg)\n`)),
  ],
  [
    'many questions in a cell',
    'searches in one cell',
    () =>
      withCells(
        `  c: = ${Array.from({ length: 30 }, (_, i) => `best("back squat", ${80 + i} deg)`).join(' + ')}\n`,
      ),
  ],
  [
    'costly fields',
    'a search for each field',
    () =>
      `${body}programs:\n${many(300, (i) => program(`p${i}`, [squat.replace('78 %', `= 0.7 * best("back squat", ${80 + i / 10} deg)`)], 1))}`,
  ],
  ['huge formula', 'a formula of 900 kB', () => withCells(`  a: = ${'1+'.repeat(450_000)}1\n`)],
  [
    'huge formula in a field',
    'a formula of 900 kB',
    () => swapped('65 kg', `= ${'1+'.repeat(450_000)}1`),
  ],
  [
    'formulas in every field',
    'a formula where none belongs',
    () =>
      swapped('angles: flexion', 'angles: = 1').replaceAll('hold: knee extension', 'hold: = "x"'),
  ],
  ['formula overflows', 'infinity by a formula', () => swapped('65 kg', '= 1e308 * 1e308 * 1 kg')],
  [
    'escape in a formula',
    'send commands by a text',
    () => withCells('  a: = "\\u001b[31m"\n  b: { is: = 1, note: "\\e[31m", unit: "\\e[31m" }\n'),
  ],
  [
    'escape in an answer',
    'send commands by what a cell gives',
    () => withCells(`  a: '= "\\u001b[31mred\\u009b2J"'\n`),
  ],
  ['field asks of the system', 'run code in a field', () => swapped('65 kg', '= process.exit(1)')],
];

export const words: readonly Row[] = [
  ['escapes', escapes],
  ['bidi overrides', overrides],
  ['lone surrogates', 'a\ud800b\udfff'],
  ['line breaks', 'a\n# heading\n\r\n| x |\u2028\u2029\u0085b\u000bb\u000c'],
  ['table and script', '| x | <script>alert(1)</script> |'],
  ['backticks', '`` ` ``` code | <b> `'],
  ['html in code', '`<img src=x onerror=alert(1)>` | `a|b`'],
  ['a fence', `${'a'.repeat(74)} \`\`\` ${'b'.repeat(76)} <script>`],
  ['links', '[x](javascript:alert(1)) ![x](http://x.org/y.png) <http://x.org> [x]: y'],
  ['blanks only', ' \t\u00a0\u200b '],
  ['marks', '# > - 1. *** ___ ~~~ === \\'],
  ['zero width signs', 'a\u200b\u200d\u2060\ufeff\u00adb\u{e0041}'],
].flatMap(([name = '', text = '']): Row[] => [
  [`program named by ${name}`, 'break out of tables or command the terminal', () => named(text)],
  [
    `title of ${name}`,
    'break out of a heading',
    () => `${swapped(title, `title: ${JSON.stringify(text)}`)}note: ${JSON.stringify(text)}\n`,
  ],
  [
    `athlete named by ${name}`,
    'break out of a line',
    () => swapped('code: A', `code: ${JSON.stringify(text)}`),
  ],
  [
    `cell of ${name}`,
    'break out of the table of cells',
    () =>
      withCells(
        `  ${JSON.stringify(text)}: { is: = 1:5, note: ${JSON.stringify(text)}, chart: yes }\n  b: ${JSON.stringify(`= ${text}`)}\n`,
      ),
  ],
  [
    `unknown names of ${name}`,
    'break out of a message',
    () =>
      swapped('hold: knee extension', `hold: ${JSON.stringify(text)}`)
        .replace('80 kg', () => JSON.stringify(text))
        .concat(`${JSON.stringify(text)}: 1\n`),
  ],
  [
    `circle named by ${name}`,
    'break out of a message by like',
    () =>
      `${plain}  ${JSON.stringify(text)}: { like: ${JSON.stringify(text)}, change: { ${JSON.stringify(text)}: 1 } }\n`,
  ],
  [`raw ${name}`, 'break the parser', () => swapped(title, `title: ${text}`)],
]);

export const files: readonly Row[] = [
  ['byte order mark', 'hide the first key', () => `\ufeff${plain}`],
  ['two byte order marks', 'hide the first key twice', () => `\ufeff\ufeff${plain}`],
  ['utf-16', 'another encoding', () => Buffer.from(`\ufeff${plain}`, 'utf16le').toString('utf8')],
  [
    'bytes that are no text',
    'a picture',
    () => Buffer.from(Array.from({ length: 50_000 }, (_, i) => (i * 7919) % 256)).toString('utf8'),
  ],
  ['windows line ends', 'other line ends', () => plain.replaceAll('\n', '\r\n')],
  ['old line ends', 'line ends that are none', () => plain.replaceAll('\n', '\r')],
  ['tabs', 'indent by tabs', () => plain.replaceAll('  ', '\t')],
  ['empty', 'nothing', () => ''],
  ['blank', 'blanks only', () => ' \n\t\n'],
  ['only comments', 'comments only', () => '# a\n# b\n'],
  ['only a marker', 'an empty document', () => '---\n'],
  ['list at the top', 'a list', () => '- 1\n- 2\n'],
  ['text at the top', 'a text', () => 'hello'],
  ['number at the top', 'a number', () => '42'],
  ['json', 'another language', () => '{"title": "x", "athlete": null}'],
  ['html', 'a web page', () => '<!doctype html><script>alert(1)</script>'],
  [
    'lists everywhere',
    'lists for groups',
    () =>
      'title: []\nangles: []\nathlete: []\ntests: {}\ntarget: []\nprograms: []\ncells: []\nlifts: []\nmachines: []\nchains: []\nbands: []\nlimits: []\n',
  ],
  [
    'nothing everywhere',
    'empty values',
    () =>
      'title:\nangles:\nathlete:\ntests:\ntarget:\nprograms:\ncells:\nlifts:\nmachines:\nchains:\nbands:\nlimits:\n',
  ],
  [
    'nothing in lists',
    'empty entries',
    () =>
      'title: x\nangles: flexion\ntests: [~, [], {}]\nprograms: { a: ~, b: { work: [~, [], 1] } }\ncells: { a: ~, b: [] }\n',
  ],
  ['unclosed quote', 'a text without end', () => `${plain}note: "${'x\n'.repeat(5_000)}`],
  ['many faults', 'a fault a line', () => ']: [\n'.repeat(3_000)],
  ['the starting scenario', 'nothing at all', () => startingScenario],
];
