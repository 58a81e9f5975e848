/** Where the site is built: `SITE_FOLDER` in the environment, else `dist`. */
export const SITE = process.env['SITE_FOLDER'] ?? 'dist';
