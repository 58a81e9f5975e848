import { expandDesignators, shortenDesignators } from './designators.ts';
import type { Line } from './job.ts';

/**
 * Makes one designator of a line a line of its own, just behind it, so that it is judged by its own
 * readings. A line that has no other stays as it is.
 * @param id of the new line
 */
export const splitLine = (
  lines: readonly Line[],
  lineId: string,
  designator: string,
  id: string,
): Line[] =>
  lines.flatMap((line) => {
    const { list } = expandDesignators(line.designators);
    if (line.id !== lineId || list.length < 2 || !list.includes(designator)) return [line];
    const { [designator]: own, ...others } = line.fitted;
    return [
      {
        ...line,
        designators: shortenDesignators(list.filter((one) => one !== designator)),
        fitted: others,
      },
      {
        ...line,
        id,
        designators: designator,
        // What is known of this one now speaks for itself.
        decision: 'judge',
        decisionReason: '',
        fitted: own === undefined ? {} : { [designator]: own },
      },
    ];
  });
