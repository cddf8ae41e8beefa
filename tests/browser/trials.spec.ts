import { submit } from './fill';
import { expect, ives, teal, test, wren } from './people';

test('the published trial of the demo answers in a sentence, also to the funder', async ({ openAs }) => {
  const sentence =
    /^Cold ferment lost \d+\.\d more units in 100 than hot-water bath \(\d+\.\d to \d+\.\d\)\.$/;
  for (const email of [wren, teal]) {
    const page = await openAs(email);
    await page.goto('/trials');
    const results = page.getByRole('region', { name: 'Published results' });
    await results.getByRole('link', { name: 'Ferment or bath in buckets' }).click();
    await expect(page.locator('.answer-sentence')).toHaveText(sentence);
    await expect(page.locator('main')).toContainText('23 of 24 runs were made.');
  }
});

test('a member is told what the running trial has drawn for their site, with the form filled in', async ({
  openAs,
}) => {
  const page = await openAs(ives);
  await page.goto('/today');
  await expect(
    page.getByRole('link', { name: /^Start the next batch of “Lime or bath for buckets”: / }),
  ).toHaveAttribute('href', /^\/batches\/new\?.*trialSlotId=/);
  await page.goto('/batches/new');
  const line = page.getByText(/^Next in the trial “Lime or bath for buckets” at Mill Lane Garden: /);
  const arm = /: (hot-water bath|cold lime soak)/.exec((await line.textContent()) ?? '')?.[1] ?? '';
  await line.getByRole('link').click();
  await expect(
    page.getByText(`This batch is for the trial “Lime or bath for buckets”: ${arm}`),
  ).toBeVisible();
  await expect(page.locator('[name="unitCount"]')).toHaveValue('8');
  await expect(page.locator('[name="components.0.treatment"] option:checked')).toContainText(
    arm.slice(arm.lastIndexOf(' ') + 1),
  );
});

test('a trial is planned, its size read, taken over and started, and then its plan is closed', async ({
  openAs,
}) => {
  test.setTimeout(120_000);
  const page = await openAs(wren);
  const title = `Blocks ${Date.now()}`;
  await page.goto('/trials/new');
  const fill = (name: string, value: string) => page.locator(`[name="${name}"]`).fill(value);
  await fill('title', title);
  await fill('question', 'Do longer baths lose fewer blocks?');
  await page.locator('[name="containerKind"]').selectOption('block');
  await fill('arms.0.label', 'one hour');
  await fill('arms.1.label', 'two hours');
  await page.getByRole('checkbox', { name: 'Coldbrook Cellar' }).check();
  await page.getByRole('checkbox', { name: 'Hazel Court Rooftop' }).check();
  await fill('unitsPerRun', '10');
  await fill('expectedPercent', '30');
  await fill('differencePoints', '-25');
  await fill('likeness', '0.1');
  await submit(page);
  await expect(page.locator('.answer-sentence')).toHaveText(
    /^It takes \d+ runs of each arm at each of 2 sites: \d+ treatment runs and \d+ units\./,
  );
  await page.getByRole('button', { name: /^Plan \d+ runs of each arm at each site$/ }).click();
  await expect(
    page.getByText(/^\d+ rounds, the first on .+, the last on .+\. The order is drawn/),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Draw the list and start' }).click();
  await expect(page.locator('.answer-sentence')).toHaveText(
    /^0 of \d+ treatment runs are made, none is missing, none departed from the plan\.$/,
  );
  await expect(page.getByRole('link', { name: 'Change the plan' })).toHaveCount(0);
});
