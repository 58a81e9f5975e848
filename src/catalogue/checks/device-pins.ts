import { valuesOf } from '../read-folder.ts';
import { cellFault, type Check } from './check.ts';
import { goodRows } from './lookups.ts';

const rule = 'pinout';

export const devicePins: Check = {
  id: rule,
  about: 'Every pinout has all of its pins, each once.',
  needs: ['devices/pinouts.csv', 'devices/pins.csv'],
  check: (tables) => {
    const pins = valuesOf(tables, 'devices/pins.csv');
    const file = 'devices/pinouts.csv';
    return goodRows(tables, file).flatMap((row) => {
      const own = pins.filter(({ pinout }) => pinout === row.value.id).map(({ pin }) => pin);
      const wanted = Array.from({ length: row.value.pins }, (_, index) => index + 1);
      const missing = wanted.filter((pin) => !own.includes(pin));
      if (missing.length === 0 && own.length === wanted.length) return [];
      const wrong =
        missing.length > 0 ? `lacks pin ${missing.join(', ')}` : 'has more pins than that';
      return [
        cellFault(rule, file, row, 'pins', { wrong, expected: `pins 1 to ${row.value.pins}` }),
      ];
    });
  },
};
