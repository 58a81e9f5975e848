/** What the page that saves the whole site is told by the worker. */
export type Progress =
  { done: number; total: number; all?: true } | { fault: string } | { forgotten: number };
