const CUT = ' …';

/**
 * Lines of words that are no wider than they may be. Units stay with their numbers, for only plain
 * spaces part; what does not fit into the last line is cut after a whole word and said to be.
 * @param width of a text, in the unit of `widest`
 * @param most lines, at least 1
 */
export const wrapped = (
  text: string,
  width: (text: string) => number,
  widest: number,
  most: number,
): string[] => {
  const lines: string[] = [];
  let line = '';
  const words = text.split(' ').filter((word) => word !== '');
  for (const [at, word] of words.entries()) {
    const longer = line === '' ? word : `${line} ${word}`;
    const last = lines.length === most - 1;
    const room = last && at < words.length - 1 ? widest - width(CUT) : widest;
    if (line === '' || width(longer) <= room) {
      line = longer;
      continue;
    }
    if (last) {
      // The end may still fit where the cut would not be needed.
      const rest = [line, ...words.slice(at)].join(' ');
      return [...lines, width(rest) <= widest ? rest : `${line}${CUT}`];
    }
    lines.push(line);
    line = word;
  }
  return line === '' ? lines : [...lines, line];
};
