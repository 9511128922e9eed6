import type { Reading } from '../reading.ts';
import type { Path } from '../scenario.ts';
import { lastName } from '../valueName.ts';

/**
 * Reads a number from a cell of a table. Only one sign of decimals is taken, and no sign that parts
 * thousands: "1.234" is a torque in one country and a thousand times it in another.
 *
 * @param reading of the table
 * @param what the cell should hold, as in "a trial"
 * @returns undefined if it is none; problems are collected, never thrown
 */
export function tableNumber(
  reading: Reading,
  cell: string,
  path: Path,
  what: string,
  decimal: 'point' | 'comma' = 'point',
): number | undefined {
  const plain = cell.replace(/\u2212/g, '-').trim();
  const isWritten = decimal === 'point' ? /^[+-]?\d{1,9}(\.\d+)?$/ : /^[+-]?\d{1,9}(,\d+)?$/;
  if (isWritten.test(plain)) return Number(plain.replace(',', '.'));
  const { message, hint } = slip(plain, what, decimal);
  reading.refuse(path, { code: 'table-number', message: `${lastName(path)} ${message}`, hint });
  return undefined;
}

function slip(
  cell: string,
  what: string,
  decimal: 'point' | 'comma',
): { readonly message: string; readonly hint: string } {
  if (cell === '')
    return { message: `is empty; ${what} is a number`, hint: 'fill it in, or delete the line' };
  if (/^[+-]?\d{1,3}([.,' \u00a0\u2009\u202f]\d{3})+([.,]\d+)?$/.test(cell) && !isDecimal(cell))
    return {
      message: `is "${cell}", with a sign between thousands`,
      hint: 'write numbers without it, such as 1234.5',
    };
  if (isDecimal(cell))
    return decimal === 'point'
      ? {
          message: `is "${cell}", with a decimal comma; this table is read with decimal points`,
          hint: 'write decimal: comma in the test if the whole table has them',
        }
      : {
          message: `is "${cell}", with a decimal point; this table is read with decimal commas`,
          hint: 'delete decimal: comma from the test if the whole table has points',
        };
  if (/^[+-]?\d+([.,]\d+)?\s*\S/.test(cell))
    return {
      message: `is "${cell}"; a cell holds a number alone`,
      hint: 'write the unit once, in the test, and only the number in the table',
    };
  return {
    message: `is "${cell}"; ${what} is a number`,
    hint: 'leave the cell empty for a trial that was not done',
  };
}

/** One sign and decimals: with just three of them it could be thousands, but the sign is known. */
const isDecimal = (cell: string): boolean => /^[+-]?\d+[.,]\d+$/.test(cell);
