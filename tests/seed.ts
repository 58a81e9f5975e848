import fc from 'fast-check';

/**
 * Property tests start from one seed, so that a change that passes here passes everywhere. Fresh
 * seeds are tried by `npm run fuzz`, and what it finds becomes a case.
 */
const SEED = 20_260_101;

fc.configureGlobal({ seed: Number(process.env['FUZZ_SEED'] ?? SEED) });
