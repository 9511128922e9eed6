/**
 * A part of the model that an answer rests on; what each rests on in turn is told by
 * `questions/trace`. Lifts, actions and programs by name.
 */
export type Step =
  | { readonly step: 'body' }
  /** Largest torque by angle of an action. */
  | { readonly step: 'curve'; readonly action: string }
  /** What all muscles together can give. */
  | { readonly step: 'strength' }
  /** How a lift is held, and with what share of the curves it is done. */
  | { readonly step: 'lift'; readonly lift: string }
  | { readonly step: 'muscle'; readonly muscle: string; readonly joint: string }
  /** A program as written, with its loads. */
  | { readonly step: 'program'; readonly program: string }
  | { readonly step: 'forecast'; readonly program: string }
  | { readonly step: 'target' };
