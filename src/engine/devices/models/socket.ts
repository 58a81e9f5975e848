import { figureOf } from './rating.ts';

export const seatHeight = figureOf('seat-height', 'm');
export const contact = figureOf('contact-resistance', 'ohm');
export const builtInCapacitor = figureOf('built-in-capacitor', 'F');
