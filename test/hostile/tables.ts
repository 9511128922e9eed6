import { escapes, many, type Row, swapped } from './parts.ts';

const columns = '{ angle: Angle, value: Torque }';
const test = (name: string, more = columns) =>
  `  - { action: knee extension, contraction: isometric, unit: N m, trials from: ${name}, columns: ${more} }\n`;
const naming = (name: string, more?: string) => () =>
  swapped('tests:\n', `tests:\n${test(name, more)}`);

/** Tables that lie beside a hostile scenario. */
export const hostileTables: Readonly<Record<string, () => string>> = {
  'largest.csv': () => `Angle,Torque\n${'40,112\n'.repeat(4_998)}`,
  'wrong.csv': () => `Angle,Torque\n${'4x,1,1\n'.repeat(4_998)}`,
  'words.csv': () => `Angle;Torque\n${'40;1,2\n'.repeat(4_998)}`,
  'wide.csv': () => `${many(50_000, (i) => `C${i},`)}Angle,Torque\n`,
  'quotes.csv': () => `Angle,Torque\n${'"'.repeat(400_001)}\n`,
  'inner.csv': () => `Angle,Torque\n${'40,"1""2"\n'.repeat(4_998)}`,
  'digits.csv': () => `Angle;Torque\n40;${"1'234".repeat(80_000)}x\n`,
  'huge number.csv': () => `Angle;Torque\n40;${'9'.repeat(400_000)}\n`,
  'signs.csv': () => `Angle;Torque\n40;${escapes}\n`,
  'header.csv': () => `Angel${escapes},Torque\n40,112\n`,
  'prototype.csv': () => '__proto__,constructor\n40,112\n',
  'more.csv': () => `Angle,Torque\n${'40,112\n'.repeat(200_000)}`,
};

export const tables: readonly Row[] = [
  ['table outside', 'read a file above the folder', naming('../secret.yaml')],
  ['table link out', 'leave the folder by a link', naming('out.yaml')],
  ['table is no table', 'a scenario for a table', naming('hostile.yaml')],
  ['table as large as is read', 'slow reading', naming('largest.csv')],
  ['table larger than is read', 'slow reading', naming('more.csv')],
  ['table of uneven lines', 'a problem each', naming('wrong.csv')],
  ['table of wrong cells', 'five thousand problems', naming('words.csv')],
  ['table of many columns', 'costly hints', naming('wide.csv')],
  ['table of quotes', 'a quote without end', naming('quotes.csv')],
  ['table of quotes in quotes', 'cells that are no numbers', naming('inner.csv')],
  ['table with a long cell', 'slow recognition of numbers', naming('digits.csv')],
  ['table with a huge number', 'infinite torque', naming("'huge number.csv'")],
  ['table with raw signs', 'command the terminal from a cell', naming('signs.csv')],
  ['table with raw names', 'command the terminal from a header', naming('header.csv')],
  [
    'table of prototypes',
    'change all objects from a header',
    naming('prototype.csv', '{ angle: __proto__, value: constructor }'),
  ],
  [
    'table three hundred times',
    'read one table over and over',
    () => swapped('tests:\n', `tests:\n${test('largest.csv').repeat(290)}`),
  ],
];
