/** One number or word of a plan, as it is and as it would be. */
export type Difference = { readonly path: string; readonly from: unknown; readonly to: unknown };

/** What a plan would be if an assumption of it were another value: the value, what differs, and that in a line. */
export type IfWrong = {
  readonly value: unknown;
  readonly changes: readonly Difference[];
  readonly text: string;
};
