import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { MILLISECONDS } from './measuring.ts';

const PROBE = pathToFileURL(fileURLToPath(new URL('say-usage.ts', import.meta.url))).href;
const KILO = 1000;
const MICROSECONDS = 1e6;
/** Characters of what a command printed last that are shown where it fails. */
const SHOWN = 4000;

/** What a command took. */
export interface Took {
  /** By the clock, s: a build waits for disks and for other processes. */
  seconds: number;
  /** The most that one of its Node processes held, MB. */
  megabytes: number;
  /** Of the processors, by its Node processes, s: what else the machine does counts for little. */
  processor: number;
}

/**
 * Runs a command in a folder and measures it.
 * @throws Error with what it printed last, where it does not end well
 */
export const took = (folder: string, command: string, words: readonly string[]): Took => {
  const place = mkdtempSync(join(tmpdir(), 'understudy-bench-'));
  const usage = join(place, 'usage');
  const env = {
    ...process.env,
    ASTRO_TELEMETRY_DISABLED: '1',
    NODE_OPTIONS: `--import=${PROBE}`,
    SAY_USAGE: usage,
  };
  try {
    const start = performance.now();
    const ended = spawnSync(command, words, {
      cwd: folder,
      env,
      encoding: 'utf8',
      // A build of many pages says much; Node would end it at one megabyte.
      maxBuffer: Infinity,
    });
    const seconds = (performance.now() - start) / MILLISECONDS;
    if (ended.status !== 0)
      throw new Error(
        `${command} ${words.join(' ')}: ${ended.stdout.slice(-SHOWN)}\n${ended.stderr.slice(-SHOWN)}`,
      );
    const processes = readFileSync(usage, 'utf8')
      .trim()
      .split('\n')
      .map((line) => line.split(' ').map(Number));
    return {
      seconds,
      megabytes: Math.max(...processes.map(([held = 0]) => held)) / KILO,
      processor: processes.reduce((sum, [, took = 0]) => sum + took, 0) / MICROSECONDS,
    };
  } finally {
    rmSync(place, { recursive: true, force: true });
  }
};

/** The same for a script of this project's `package.json`. */
export const tookScript = (folder: string, script: string): Took =>
  took(folder, 'npm', ['run', '--silent', script]);
