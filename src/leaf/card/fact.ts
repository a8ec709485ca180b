/** One line of the title block: what it is, and its value in words. */
export interface Fact {
  readonly label: string;
  readonly text: string;
}
