export { readMarking } from './read-marking.ts';
export type {
  Hints,
  Measured,
  Reading,
  Taper,
  TemperatureCharacteristic,
  Tolerance,
} from './reading.ts';
export { readToleranceLetter } from './tolerances.ts';
export {
  readTemperatureCharacteristic,
  sayCharacteristic,
  type TemperatureMeaning,
} from './temperatures.ts';
export { readVoltageCode } from './voltage-codes.ts';
export { readDateCode } from './dates.ts';
export { readClimate } from './climate.ts';
