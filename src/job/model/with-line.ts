import { isBlank } from './is-blank.ts';
import { MOST_LINES, type Job, type Line } from './job.ts';

/** A job with a line more, in the place of an empty last row; nothing where it holds no more lines. */
export const withLine = (job: Job, line: Line): Job | undefined => {
  const last = job.lines.at(-1);
  const lines = last !== undefined && isBlank(last) ? job.lines.slice(0, -1) : job.lines;
  return lines.length < MOST_LINES ? { ...job, lines: [...lines, line] } : undefined;
};
