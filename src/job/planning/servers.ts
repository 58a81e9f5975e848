import type { Family } from '../understanding/part-of-line.ts';
import type { Server } from './asked.ts';
import { capacitors } from './serve-capacitor.ts';
import { devices } from './serve-device.ts';
import { kinds } from './serve-kind.ts';

/** How each family of parts is served. */
export const SERVERS: Readonly<Record<Family, Server>> = {
  capacitor: capacitors,
  kind: kinds,
  device: devices,
};
