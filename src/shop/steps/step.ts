/** One thing to do, in words; done for each copy unless `once`. */
export interface Step {
  readonly text: string;
  readonly once?: true;
}
