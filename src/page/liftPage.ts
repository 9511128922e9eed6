/** Pages about the catalogue of lifts: the list, and one lift with its drawing. */
import type { LookedUp } from '../questions/lookUpLift.ts';
import { jointWords } from '../tables/actions.ts';
import { takesBands, takesChains } from '../tables/lifts.ts';
import type { Report } from './report.ts';
import { drawFigures } from './stickFigure.ts';
import { listInWords } from './words.ts';

/** The names of all lifts, by the joint that leads. */
export function liftList(byJoint: ReadonlyMap<string, readonly string[]>): Report {
  return {
    title: 'Lifts',
    sections: [...byJoint].map(([joint, names]) => ({
      heading: `led by the ${joint === 'shoulder across' ? 'shoulder, across the body' : joint}`,
      blocks: [{ kind: 'text', text: `${listInWords(names)}.` }],
    })),
  };
}

/** What the model takes a lift to be, in words. */
export function liftPage({ lift, postures }: LookedUp): Report {
  const angles = postures.map(({ deg }) => `${deg.toFixed(0)}°`);
  const { name, motion } = jointWords[lift.leading];
  const drawn =
    postures.length > 0
      ? `drawn at ${listInWords(angles)} of ${motion} for a person of 1.75 m`
      : 'a person of 1.75 m can hold no posture of it in balance';
  const sides = lift.sides === 2 ? 'both sides share the load' : 'one side works';
  return {
    title: lift.name,
    sections: [
      {
        heading: 'What is assumed',
        blocks: [
          {
            kind: 'text',
            text: `The ${name} leads; ${drawn}; ${sides}.`,
          },
          { kind: 'list', items: lift.assumed },
          { kind: 'text', text: extras(lift) },
          { kind: 'text', text: `Source: ${lift.source}` },
        ],
      },
    ],
  };
}

/** Whether chains and bands can be added, and what that takes for granted. */
function extras(lift: LookedUp['lift']): string {
  const { aboveFloor } = lift;
  if (takesChains(lift))
    return `Takes chains and bands${aboveFloor ? `: then ${aboveFloor.assumed}` : ''}.`;
  return takesBands(lift) ? 'Takes bands, beside the cable.' : 'Takes neither chains nor bands.';
}

/** The drawing of both postures, as text. */
export function liftDrawing({ lift, postures }: LookedUp): string {
  return drawFigures(
    lift,
    postures.map(({ placement }) => placement),
  );
}
