export interface SheetOptions {
  /** Printed as it is given. */
  readonly date: string;
  /** The maker's name for the bag; left out, the brief's. */
  readonly name?: string;
  /** For a class: with blanks for each pupil's own swatch. */
  readonly class?: boolean;
  /** Sentences to print near the top, such as the plan's warnings. */
  readonly remarks?: readonly string[];
}
