import { formatValue, type Habit, type Reading } from '../engine/index.ts';
import { typeset } from '../text/words.ts';

const METERS = {
  '1 kHz': 'at 1 kHz',
  '100 or 120 Hz': 'at 100 or 120 Hz',
  dc: 'on an ohmmeter',
} as const;

/** What a meter reads if a reading is right: `measures 42 nF to 52 nF at 1 kHz`. */
export const meterText = ({ measured, kind }: Reading, habit?: Habit): string => {
  if (measured === undefined) return '';
  const unit = kind === 'resistor' ? 'ohm' : 'F';
  const { min, max } = measured.range;
  const [low, high] = [min, max].map((end) => formatValue(Number(end.toPrecision(3)), unit, habit));
  const range = low === high ? (low ?? '') : `${low ?? ''} to ${high ?? ''}`;
  const { toleranceTaken } = measured;
  const taken =
    toleranceTaken === undefined || min === max
      ? ''
      : `, with ±${formatValue(toleranceTaken, 'fraction', habit)} taken`;
  return typeset(`measures ${range} ${METERS[measured.with]}${taken}`);
};
