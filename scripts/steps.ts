import { spawn, spawnSync } from 'node:child_process';

/** One npm script with its arguments, run as a reader would run it. */
export interface Step {
  name: string;
  arguments?: string[];
}

/** How npm is called for a step, with its output shown and nothing calling home. */
const callOf = ({ name, arguments: given = [] }: Step) => {
  console.log(`\n== npm run ${[name, ...given].join(' ')}`);
  const extra = given.length === 0 ? [] : ['--', ...given];
  return {
    words: ['run', '--silent', name, ...extra],
    options: { stdio: 'inherit', env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' } },
  } as const;
};

/** Runs an npm script; true if it ended well. */
export const runStep = (step: Step): boolean => {
  const { words, options } = callOf(step);
  return spawnSync('npm', words, options).status === 0;
};

/** Runs scripts in order up to the first that fails. */
export const runAll = (steps: readonly Step[]): boolean => steps.every(runStep);

/** Runs an npm script beside whatever else goes on; whether it ended well. */
export const runBeside = (step: Step): Promise<boolean> => {
  const { words, options } = callOf(step);
  return new Promise((resolve) => {
    spawn('npm', words, options)
      .on('error', () => resolve(false))
      .on('close', (code) => resolve(code === 0));
  });
};

/** Runs scripts that do not need one another side by side; whether all ended well. */
export const runTogether = async (steps: readonly Step[]): Promise<boolean> =>
  (await Promise.all(steps.map(runBeside))).every(Boolean);
