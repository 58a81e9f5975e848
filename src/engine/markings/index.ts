export { readMarking, type MarkingCatalogue } from './read-marking.ts';
export type {
  Climate,
  Evidence,
  Hints,
  ReadColours,
  Measured,
  Reading,
  Taper,
  ReadingKind,
  Section,
  Sureness,
  TemperatureCharacteristic,
  Tolerance,
} from './reading.ts';
export { readToleranceLetter, type ToleranceMeaning } from './tolerances.ts';
export {
  readTemperatureCharacteristic,
  sayCharacteristic,
  type TemperatureMeaning,
} from './temperatures.ts';
export { readVoltageCode, type VoltageMeaning } from './voltage-codes.ts';
export { readDateCode, type DateMeaning } from './dates.ts';
export { readClimate } from './climate.ts';
