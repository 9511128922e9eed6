import type { StrengthFit } from '../inference/fitStrength.ts';
import type { Test } from '../notebook/tests/strengthTest.ts';
import type { Problem } from '../notebook/text/problem.ts';
import type { Source } from '../notebook/text/source.ts';

/** Torque tests that contradict each other or what people can do: allowed, but worth a look. */
export function fitRemarks(
  source: Source,
  tests: readonly Test[],
  fits: readonly StrengthFit[],
): Problem[] {
  return fits.flatMap(({ action, findings }) => {
    // The tests of an action in the order of the file, as they were fitted.
    const paths = tests.flatMap((test) =>
      test.kind === 'torque' && test.action === action ? test.points.map(({ path }) => path) : [],
    );
    return findings.flatMap((finding): Problem[] => {
      if (finding.kind === 'misread')
        return [
          {
            code: 'odd-torques',
            message: `the tests of ${action} together would fit people far better if they were read another way`,
            at: source.at(paths[0] ?? []),
            hint: 'check the unit and where angles count from; the report says what would explain it',
          },
        ];
      if (finding.kind !== 'disagrees') return [];
      const { point, deg, measured, expected } = finding;
      return [
        {
          code: 'odd-torque',
          message: `${action} of ${Math.round(measured)} N m at ${Math.round(deg)}° does not fit the other tests: about ${Math.round(expected)} N m would`,
          at: source.at(paths[point] ?? []),
          hint: 'check angle, unit and typing; the report says what would explain it',
        },
      ];
    });
  });
}
