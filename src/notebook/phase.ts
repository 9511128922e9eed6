/** Some weeks of a program with sessions, loads and lighter weeks of their own. */
export interface Phase {
  readonly name?: string;
  readonly weeks: number;
  /** 0 in weeks off. */
  readonly sessionsPerWeek: number;
  /** Change of load from one week to the next, share. */
  readonly progress: number;
  /** Weeks with fewer sets, counted within the phase; `sets` is the share that stays. */
  readonly deloads: readonly { readonly week: number; readonly sets: number }[];
  /** Which entries of the program's work it does, by their places from 0. */
  readonly places: readonly number[];
}
