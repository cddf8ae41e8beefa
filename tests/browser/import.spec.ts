import { expect, test, wren } from './people';

const csv = (rows: readonly (readonly string[])[]) => ({
  name: 'straw.csv',
  mimeType: 'text/csv',
  buffer: Buffer.from(rows.map((row) => row.join(';')).join('\r\n')),
});

test('a table of lots is understood, checked, mended, added once and taken back', async ({ openAs }) => {
  test.setTimeout(600_000);
  const page = await openAs(wren);
  const mark = Date.now().toString(36).toUpperCase();
  const good = `BR-${mark}`.slice(0, 18);
  const table = csv([
    ['Lote', 'Material', 'Recibido el', 'Peso (kg)', 'Humedad %'],
    [`${good}1`, 'Paja de trigo', '13/05/2026', '180,5', '12'],
    [`${good}2`, 'Paja de trigo', '31/02/2026', '90', '12'],
  ]);
  const main = page.locator('main');
  await page.goto('/import?kind=substrate_lots');
  await main.getByRole('button', { name: 'Look at it' }).click();
  await expect(page.locator('.error-summary')).toContainText('Choose a file with a table');
  await page.getByLabel('File', { exact: true }).setInputFiles(table);
  await main.getByRole('button', { name: 'Look at it' }).click();
  await expect(page.locator('.answer-sentence')).toContainText('2 rows were read', { timeout: 150_000 });
  await expect(main.getByLabel('Decimal sign')).toHaveValue('comma');
  await expect(main.getByLabel('Unit of “Peso (kg)”')).toHaveValue('kg');

  await main.getByRole('button', { name: 'Check all rows' }).click();
  const answer = page.locator('.answer-sentence');
  await expect(answer).toHaveText('1 row is new, none is there already, 1 needs you.', { timeout: 150_000 });
  await expect(main).toContainText('Enter “Recibido el” as a real date');
  await main.getByRole('link', { name: 'Mend row 3' }).click();
  await main.getByLabel('Recibido el').fill('28/02/2026');
  await main.getByRole('button', { name: 'Check this row' }).click();
  // Where another table is worked on at this moment, the page of the file tells of the row when its turn has come.
  await main.getByRole('button', { name: 'Add 2 new rows' }).click({ timeout: 150_000 });
  await expect(answer).toContainText('2 rows were added', { timeout: 150_000 });
  const added = page.url();

  await page.goto('/import?kind=substrate_lots');
  await page.getByLabel('File', { exact: true }).setInputFiles(table);
  await main.getByRole('button', { name: 'Look at it' }).click();
  await main.getByRole('button', { name: 'Check all rows' }).click();
  await expect(answer).toHaveText('No row is new, 1 is there already, 1 needs you.', { timeout: 150_000 });

  await page.goto(added);
  await main.getByRole('link', { name: 'Take back what was added' }).click();
  await main.getByLabel('Reason').fill('weighed with the pallet');
  await main.getByRole('button', { name: 'Take it back' }).click();
  await expect(main).toContainText('2 records were taken back.');
  await expect(answer).toContainText('2 rows were read');
});
