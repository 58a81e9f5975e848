export { readMarking } from './read-marking.ts';
export type {
  Hints,
  Measured,
  Reading,
  Taper,
  TemperatureCharacteristic,
  Tolerance,
} from './meanings/reading.ts';
export { readToleranceLetter } from './ratings/tolerances.ts';
export {
  readTemperatureCharacteristic,
  sayCharacteristic,
  type TemperatureMeaning,
} from './lexicon/temperatures.ts';
export { readVoltageCode } from './ratings/voltage-codes.ts';
export { readDateCode } from './beside/dates.ts';
export { readClimate } from './ratings/climate.ts';
