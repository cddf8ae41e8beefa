import { reportPackage } from '@/lib/report/package/report-package';
import { reportPdf } from '@/lib/report/pdf/report-pdf';
import { reportWorkbook } from '@/lib/report/workbook/report-workbook';
import { sampleDocument } from '../report/sample-document';

/** Ten pages are made in this time. */
const mostSeconds = 3;

async function timed(name: string, make: () => Promise<Uint8Array>): Promise<number> {
  const processor = process.cpuUsage();
  const started = performance.now();
  const content = await make();
  const seconds = (performance.now() - started) / 1000;
  const { user, system } = process.cpuUsage(processor);
  const size = `${Math.round(content.byteLength / 1024)} kB`;
  console.log(
    `${name}: ${seconds.toFixed(2)} s, ${((user + system) / 1e6).toFixed(2)} s of the processor, ${size}`,
  );
  return seconds;
}

/** Makes the forms of a report of ten pages; whether the print kept its time. */
export async function benchReport(): Promise<boolean> {
  const report = sampleDocument(26);
  const words = { howHeading: 'How', pageOf: (page: number, pages: number) => `${page} of ${pages}` };
  const print = { report, pictures: new Map<string, Uint8Array>(), paper: 'A4' as const, ...words };
  await timed('PDF, the first of a process', () => reportPdf(print));
  const seconds = await timed('PDF', () => reportPdf(print));
  const heads = { asNumber: (header: string) => header, limit: (header: string) => header, how: 'How' };
  await timed('workbook', () => reportWorkbook(report, heads));
  const instant = '2026-12-03T09:00:00.000Z';
  await timed('archive', () =>
    reportPackage(report, {
      id: '0192f3a0-0000-7000-8000-000000000001',
      version: 1,
      networkName: 'Network',
      builtAt: instant,
      publishedAt: instant,
    }),
  );
  return seconds < mostSeconds;
}
