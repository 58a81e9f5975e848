import { formatValue } from '../../engine/index.ts';
import type { Tolerance } from '../../engine/markings/index.ts';
import { capital, listed } from '../../text/words.ts';

const NO_BREAK = '\u00a0';

/** A number in plain figures without an exponent, its thousands parted from five figures on. */
export const plainNumber = (value: number): string => {
  const [whole = '', part] = Number(value.toPrecision(6))
    .toFixed(12)
    .replace(/\.?0+$/, '')
    .split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(?:\d{3})+$)/g, NO_BREAK) : whole;
  return part === undefined ? grouped : `${grouped}.${part}`;
};

/** A tolerance in words: `±10 %`, `−20 to +80 %`. */
export const sayToleranceOf = ({ minus, plus, unit }: Tolerance): string => {
  const print = (size: number): string =>
    formatValue(size, unit === 'fraction' ? 'fraction' : unit);
  if (minus === plus) return `±${print(plus)}`;
  return `${minus === 0 ? '0' : `−${print(minus)}`} to +${print(plus)}`;
};

/** How usual a meaning is, in a word. */
export const useWords: Record<'usual' | 'other' | 'rare', string> = {
  usual: 'usual',
  other: 'met',
  rare: 'seldom',
};

/** Parts by where and when they were made: `older British or German parts`. */
export const partsOf = (origins: readonly string[]): string => {
  const places = origins.filter((one) => one !== 'old' && one !== 'international').map(capital);
  if (places.length === 0) return origins.includes('old') ? 'older parts' : 'newer parts';
  return `${origins.includes('old') ? 'older ' : ''}${listed(places, 'or')} parts`;
};

/** A body in one or two words. */
export const shortBody = (id: string): string => id.replaceAll('-', ' ');
