import type { Page } from '@playwright/test';
import { broken, dropRepeated, forAxe } from './axe.ts';
import { expect, test, watch } from './watched.ts';

/** Colours are set on a drawn part by tap, by keys and by typing; the address holds them. */

const PAGE = '/read/colours/';

const paint = (page: Page, name: string) =>
  page.locator('#colour-palette').getByRole('radio', { name, exact: true });

const mark = (page: Page, name: RegExp) =>
  page.locator('#colour-marks').getByRole('radio', { name });

const headline = (page: Page) => page.locator('#colour-readings .reading h3').first();

/** Opens the page and waits until it answers. */
const open = async (page: Page, search = ''): Promise<void> => {
  const fetched = page.waitForResponse(/catalogue\/colours\.json$/);
  await page.goto(`${PAGE}${search}`);
  await fetched;
  await expect(page.locator('#copy-link')).toBeVisible();
};

/** Taps colours one after the other, each once the place before it is set. */
const tap = async (page: Page, ...names: string[]): Promise<void> => {
  for (const [at, name] of names.entries()) {
    await expect(page.locator('#colour-marks input').nth(at)).toBeChecked();
    await paint(page, name).click();
    await expect(page.locator('#colour-marks label').nth(at)).toContainText(name);
  }
};

test('four taps read a resistor', async ({ page }) => {
  await open(page);
  await tap(page, 'yellow', 'violet', 'red', 'gold');
  await expect(headline(page)).toHaveText(/^4\.7\skΩ ±5\s%\s+sure$/);
  await expect(page.locator('#colour-readings')).toContainText('from the other end gold would be');
  await expect(page).toHaveURL(/\?s=resistor-4&b=yellow,violet,red,gold$/);
  await expect(page.locator('.entry-drawing')).toHaveAttribute(
    'aria-label',
    /1st band yellow, 2nd band violet, 3rd band red, 4th band gold/,
  );
});

test('a band is chosen on the drawing and set anew', async ({ page }) => {
  await open(page, '?s=resistor-4&b=yellow,violet,red,gold');
  await page.locator('.target[data-mark="2"]').click();
  await expect(page.locator('#colour-palette legend')).toHaveText('3rd band: its colour');
  await expect(page.locator('.current-label')).toHaveText('3rd band');
  await paint(page, 'orange').click();
  await expect(headline(page)).toHaveText(/^47\skΩ/);
});

test('the keyboard alone reads a resistor', async ({ page }) => {
  await open(page);
  await mark(page, /^1st band/).focus();
  await page.keyboard.press('4');
  await expect(mark(page, /^2nd band/)).toBeFocused();
  await page.keyboard.press('7');
  await page.keyboard.press('2');
  // The first letter goes through green, grey and gold.
  for (const name of ['green', 'grey', 'gold']) {
    await page.keyboard.press('g');
    await expect(mark(page, /^4th band/)).toHaveAccessibleName(`4th band: ${name}`);
  }
  await expect(headline(page)).toHaveText(/^4\.7\skΩ ±5\s%/);

  // Arrows go from band to band and from colour to colour.
  await page.keyboard.press('ArrowLeft');
  await expect(mark(page, /^3rd band/)).toBeFocused();
  await expect(mark(page, /^3rd band/)).toBeChecked();
  await paint(page, 'red').focus();
  await page.keyboard.press('ArrowRight');
  await expect(paint(page, 'orange')).toBeFocused();
  await expect(headline(page)).toHaveText(/^47\skΩ ±5\s%/);
  await page.keyboard.press('Backspace');
  await expect(mark(page, /^3rd band/)).toHaveAccessibleName('3rd band: not set');
  await expect(page.locator('#colour-readings h2')).toHaveText(/readings, likeliest first/);
});

test('colours are typed', async ({ page }) => {
  await open(page);
  await page.locator('#typed').fill('472 gold');
  await expect(headline(page)).toHaveText(/^4\.7\skΩ ±5\s%/);
  await page.locator('#typed').fill('brown black black red brown');
  await expect(headline(page)).toHaveText(/^10\skΩ ±1\s%/);
  await expect(page).toHaveURL(/s=resistor-5&/);
  await page.locator('#typed').fill('YE VT mauve');
  await expect(page.locator('#typed-note')).toHaveText('No colour: mauve.');
});

test('what was typed before the tables came is read when they are there', async ({ page }) => {
  let come = (): void => undefined;
  const held = new Promise<void>((resolve) => (come = resolve));
  await page.route(/catalogue\/colours\.json$/, async (route) => {
    await held;
    await route.continue();
  });
  await page.goto(PAGE);
  await page.locator('#typed').fill('472 gold');
  come();
  await expect(headline(page)).toHaveText(/^4\.7\skΩ ±5\s%/);
  await expect(page.locator('#typed')).toHaveValue('472 gold');
});

test('a band that one cannot tell leaves the values that it may have been', async ({ page }) => {
  await open(page, '?s=resistor-4&b=yellow,,red,gold');
  await expect(headline(page)).toHaveText(/^4\.7\skΩ ±5\s%\s+possible$/);
  await expect(page.locator('#colour-readings h2')).toHaveText('10 readings, likeliest first');
  await expect(page.locator('#colour-readings')).toContainText('violet? (2nd band)');
  await expect(page.locator('#colour-readings tr', { hasText: '4.1' })).toContainText('brown');
  await paint(page, 'violet').click();
  await expect(headline(page)).toHaveText(/sure$/);
  await mark(page, /^2nd band/).check();
  await paint(page, 'cannot tell').click();
  await expect(page.locator('#colour-readings h2')).toHaveText('10 readings, likeliest first');
});

test('a part held the other way round reads the same, and can be turned', async ({ page }) => {
  await open(page, '?s=resistor-4&b=gold,red,violet,yellow');
  await expect(headline(page)).toHaveText(/^4\.7\skΩ ±5\s%\s+sure$/);
  await expect(page.locator('#colour-readings')).toContainText('begins at the 4th band');
  await page.getByRole('button', { name: 'Turn the part round' }).click();
  await expect(page).toHaveURL(/b=yellow,violet,red,gold$/);
  await expect(headline(page)).toHaveText(/^4\.7\skΩ ±5\s%/);
  await page.getByRole('button', { name: 'Clear' }).click();
  await expect(page).toHaveURL(new RegExp(`${PAGE}$`));
});

test('the band that stands apart decides between two ends', async ({ page }) => {
  await open(page, '?s=resistor-5&b=brown,black,black,red,brown');
  await expect(headline(page)).toHaveText(/^10\skΩ ±1\s%\s+likely$/);
  await page.getByRole('radio', { name: 'The left one' }).check();
  await expect(headline(page)).toHaveText(/^120\sΩ ±1\s%\s+sure$/);
  await expect(page).toHaveURL(/&apart=first$/);
});

test('a copied link shows the same part, and leads on to stand-ins', async ({
  page,
  browser,
  context,
  baseURL,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page);
  await page.getByRole('radio', { name: 'Striped film' }).check();
  await expect(page.getByRole('radio', { name: '5 stripes' })).toBeChecked();
  await tap(page, 'brown', 'black', 'orange', 'white', 'red');
  await expect(headline(page)).toHaveText(/^10\snF ±10\s% 250\sV/);
  await page.locator('#copy-link').click();
  await expect(page.locator('#copied')).toHaveText('Copied.');
  const link = await page.evaluate(() => navigator.clipboard.readText());
  expect(link).toContain('?s=film-stripes-5&b=brown,black,orange,white,red');

  const faults: string[] = [];
  const elsewhere = await browser.newContext();
  await watch(elsewhere, new URL(baseURL ?? '').origin, faults);
  const other = await elsewhere.newPage();
  await other.goto(link);
  await expect(headline(other)).toHaveText(/^10\snF ±10\s% 250\sV/);
  await expect(mark(other, /^3rd stripe: orange/)).toBeVisible();
  await other.locator('.reading .chips a').first().click();
  await expect(other).toHaveURL(/\/replace\/pet-[^/]+\/in\/[^/]+\/\?c=10/);
  await elsewhere.close();
  expect(faults).toEqual([]);
});

test('choosing another body keeps what there is room for', async ({ page }) => {
  await open(page, '?s=resistor-3&b=red,violet,orange');
  await page.locator('#colour-forms summary').click();
  await page.getByRole('radio', { name: 'Striped film' }).check();
  await expect(page).toHaveURL(/s=film-stripes-3&b=red,violet,orange$/);
  await expect(headline(page)).toHaveText(/^27\snF/);
});

test('an address full of nonsense is an empty part', async ({ page }) => {
  await open(page, '?s=%3Cscript%3E&b=%3Cb%3E,mauve&apart=up');
  await expect(page.locator('#colour-readings')).toContainText('Set the colour of each band');
  await expect(page).toHaveURL(new RegExp(`${PAGE}$`));
});

test('every place and colour is large enough for a finger', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  for (const search of ['?s=resistor-6', '?s=moulded-block-6', '?s=tantalum-bead-4']) {
    await open(page, search);
    for (const place of await page.locator('.pick-paint, .pick-mark, .pick-line .pick').all()) {
      const box = await place.boundingBox();
      expect.soft(box?.height, search).toBeGreaterThanOrEqual(44);
      expect.soft(box?.width, search).toBeGreaterThanOrEqual(44);
    }
  }
});

test.describe('axe', () => {
  test.use(forAxe);
  for (const search of ['?s=resistor-4&b=yellow,,red,gold', '?s=moulded-block-9&b=white,brown,red'])
    test(`${search} breaks no rule`, async ({ page }) => {
      await open(page, search);
      await page.locator('#colour-forms summary').click();
      await dropRepeated(page);
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        expect.soft(await broken(page, colorScheme === 'dark'), colorScheme).toEqual([]);
      }
    });
});

test.describe('without scripts', () => {
  test.use({ javaScriptEnabled: false });
  test('the colours of each scheme can be looked up', async ({ page }) => {
    await page.goto(PAGE);
    await expect(page.locator('#colour-form')).toBeHidden();
    await expect(page.locator('.figure-list')).toContainText('violet');
    await page.getByRole('link', { name: 'Tantalum bead, European code' }).click();
    const row = page.getByRole('row', { name: /^white/ });
    await expect(row).toContainText('× 0.1');
    await expect(row).toContainText(/\b3\sV/);
    await expect(row.locator('svg.swatch')).toBeVisible();
  });
});

test('colours typed into the box on the first page lead to the part with them set', async ({
  page,
}) => {
  await page.goto('/');
  await page.locator('#box').fill('yellow violet red gold');
  const answer = page.locator('#at-once').getByRole('listitem').filter({ hasText: 'four bands' });
  await expect(answer.first()).toContainText(/resistor with bands: 4\.7\skΩ/);
  await answer.first().getByRole('link').click();
  await expect(headline(page)).toHaveText(/^4\.7\skΩ ±5\s%/);
});

test('colours typed as a marking are said to be colours', async ({ page }) => {
  await page.goto('/read/?m=brown+black+orange');
  await expect(page.locator('#readings')).toContainText(/As colours.*resistor with bands: 10\skΩ/);
});

test('where the tables of colours cannot be fetched that is said, and nothing old stays', async ({
  page,
  faults,
}) => {
  await page.route(/catalogue\/colours\.json$/, (route) => route.abort());
  await page.goto('/');
  await page.locator('#box').fill('103K');
  await expect(page.locator('#at-once')).toContainText(/10\snF/);
  await page.locator('#box').fill('yellow violet red gold');
  await expect(page.locator('#at-once')).toContainText('could not be fetched');
  await expect(page.locator('#at-once')).not.toContainText(/10\snF/);
  await page.goto('/read/?m=yellow+violet+red+gold');
  await expect(page.locator('#readings')).toContainText('could not be fetched');
  for (const fault of faults) expect(fault).toContain('Failed to load resource');
  faults.length = 0;
});

test('the ways of printing a value end in colours', async ({ page }) => {
  await page.goto('/read/printed/?kind=resistor&c=4k7&tol=5');
  const row = page.locator('#printed').getByRole('row', { name: /^Resistor, four bands yellow/ });
  await expect(row).toContainText(/yellow.*violet.*red.*gold/);
  await row.getByRole('link').click();
  await expect(headline(page)).toHaveText(/^4\.7\skΩ ±5\s%/);
});
