import type { Report } from '../../src/page/report.ts';

const xDeg = Array.from({ length: 15 }, (_, index) => index * 10);

/** A report with every kind of block, in invented numbers: what the renderers are held to. */
export const smallReport: Report = {
  title: 'SN-04: stronger in the deep knee range',
  sections: [
    {
      heading: 'Verdict',
      blocks: [
        {
          kind: 'text',
          text: 'The deep squat reaches the goal: +11 % at 75–100°\n(8 to 14 %), within 8 weeks.\n\nLong holds come second; *both* are better than the box squat.',
        },
        {
          kind: 'table',
          columns: [
            { head: 'Program', align: 'left' },
            { head: 'Gain at 75–100°', align: 'right' },
            { head: 'Minutes | week', align: 'right' },
          ],
          rows: [
            ['deep squat', '+11 %', '64'],
            ['long holds', '+9 %', '105'],
          ],
        },
      ],
    },
    {
      heading: 'Gain by angle',
      blocks: [
        { kind: 'text', text: 'Both gains are greatest in the target range.' },
        {
          kind: 'chart',
          chart: {
            title: 'gain (%)',
            x: xDeg,
            series: [
              { name: 'deep squat', y: xDeg.map((angle) => 11 - Math.abs(angle - 90) / 10) },
              { name: 'long holds', y: xDeg.map((angle) => 9 - Math.abs(angle - 80) / 10) },
            ],
            band: { fromDeg: 75, toDeg: 100, name: 'target' },
          },
        },
      ],
    },
    {
      heading: 'Cautions',
      blocks: [
        {
          kind: 'list',
          items: [
            'Not medical advice.',
            'Return to sport is a licensed clinician’s decision; local rules come first.',
          ],
        },
        { kind: 'list', items: [] },
      ],
    },
  ],
};
