/** The test that the book asks the fair test to go on with, also before that part is loaded. */

let wanted: string | null = null;

/** What is told to a fair test that is there already. */
export const WANTED = "straight-answer-go-on";

export function goOnWith(test: string): void {
  wanted = test;
  document.dispatchEvent(new Event(WANTED));
}

/** The test that is asked for, once. */
export function takeWanted(): string | null {
  const test = wanted;
  wanted = null;
  return test;
}
