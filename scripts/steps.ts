import { spawnSync } from 'node:child_process';

/** One npm script with its arguments, run as a reader would run it. */
export interface Step {
  name: string;
  arguments?: string[];
}

/** Runs an npm script with its output shown and nothing calling home; true if it ended well. */
export const runStep = ({ name, arguments: given = [] }: Step): boolean => {
  console.log(`\n== npm run ${[name, ...given].join(' ')}`);
  const extra = given.length === 0 ? [] : ['--', ...given];
  const env = { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' };
  return (
    spawnSync('npm', ['run', '--silent', name, ...extra], { stdio: 'inherit', env }).status === 0
  );
};

/** Runs scripts in order up to the first that fails. */
export const runAll = (steps: readonly Step[]): boolean => steps.every(runStep);
