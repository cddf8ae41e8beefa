import { expect, ives, odell, test, wren } from './people';

/** Pages wait for a fit, and for each other on a small machine. */
const slow = { timeout: 90_000 };

test('a site’s next step is said in a sentence with what would teach most, and its members read the same', async ({
  openAs,
}) => {
  test.setTimeout(240_000);
  const page = await openAs(wren);
  await page.goto('/questions');
  await page.getByRole('link', { name: 'What should this site do next?' }).click();
  // Fitted in a thread of its own, then streamed into the page that is already there.
  await expect(page.locator('.answer-sentence')).toHaveText(/one method can be told to do best/, slow);
  await page.getByRole('link', { name: 'Ashwell Row Garden' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'What should Ashwell Row Garden do next?',
    slow,
  );
  // The story planted it: what goes through the bath does better than what is fermented in cold water.
  await expect(page.locator('.answer-sentence')).toHaveText(
    /^(Next, Ashwell Row Garden does best with hot-water bath:|At Ashwell Row Garden no method can be told to do best yet\. With hot-water bath,) .*about \d+\.\d bags .*in 100 \(between \d+\.\d and \d+\.\d in .* next batch\).* about [\d.]+ kg .*from 10 kg of dry material/,
    slow,
  );
  await expect(page.getByRole('heading', { name: 'What would teach most' })).toBeVisible();
  const member = await openAs(ives);
  await member.goto('/questions/next');
  await expect(member.getByRole('heading', { level: 1 })).toHaveText(/^What should .+ do next\?$/, slow);
  await expect(member.locator('.answer-sentence')).not.toBeEmpty(slow);
});

test('the site whose bath is short reads so before any advice, coordinator and member alike, each in the own unit', async ({
  openAs,
}) => {
  test.setTimeout(240_000);
  const page = await openAs(wren);
  await page.goto('/questions/next');
  await page.getByRole('link', { name: 'Tarn Street Shed' }).click(slow);
  const short =
    /None of this site’s last \d+ runs of hot-water bath, whatever they filled, held its window \(the latest: \d+ of 60 minutes between 65\.6\s°C and 82\.2\s°C\)\..*Hold it in full before anything else/;
  await expect(page.locator('.caution').first()).toHaveText(short, slow);
  const address = new URL(page.url()).searchParams.get('site');
  const member = await openAs(odell);
  await member.goto(`/questions/sites/${address}`);
  await expect(member.locator('.caution')).toHaveText(/of 60 minutes between 150\s°F and 180\s°F\)/);
});

test('a member chooses season, material and equipment, and the whole answer follows the choice', async ({
  openAs,
}) => {
  test.setTimeout(240_000);
  const page = await openAs(ives);
  await page.goto('/questions/next');
  await page.getByText('Choose species, material, season and equipment').click();
  await page.getByLabel('Season of the batch').selectOption({ label: 'Winter: December to February' });
  await page.getByLabel('Material', { exact: true }).selectOption({ label: 'Rice straw' });
  await page.getByLabel('Steam').check();
  await page.getByRole('button', { name: 'Show these' }).click();
  const main = page.getByRole('main');
  await expect(main).toContainText(
    /on rice straw, in \d+ bags, inoculated in winter \(December to February\)/,
    slow,
  );
  // Nobody in the story grows on rice straw, so that the answer says what it falls back to.
  await expect(main).toContainText(
    /Fewer than six batches on rice straw can be judged so far: what is expected is for/,
  );
  await expect(main).toContainText('Taken as if Mill Lane Garden could use just the methods ticked above');
  await expect(page.locator('.answer-sentence')).toHaveText(/about [\d.]+ kg .*from 10 kg of dry material/);
  await page.getByText('Choose species, material, season and equipment').click();
  await page.getByLabel('Species', { exact: true }).selectOption({ label: 'Shiitake' });
  await page.getByRole('button', { name: 'Show these' }).click();
  await expect(page.locator('.answer-sentence')).toHaveText(
    'None of the methods that Mill Lane Garden can use suits this material and species.',
    slow,
  );
  await expect(page.getByRole('heading', { name: 'What does not suit' })).toBeVisible();
});
