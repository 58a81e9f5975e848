/** Work that may pause between its steps, and what it comes to. */
export type Steps<Result = void> = Generator<undefined, Result, undefined>;

/** What is left of a work done at once, and what it comes to. */
export const finished = <Result>(steps: Steps<Result>): Result => {
  for (;;) {
    const { done, value } = steps.next();
    if (done === true) return value;
  }
};
