import 'server-only';

/** The whole of a document once it has ended. */
export function collectPages(document: PDFKit.PDFDocument): Promise<Uint8Array<ArrayBuffer>> {
  return new Promise((resolve, reject) => {
    const parts: Buffer[] = [];
    document.on('data', (part: Buffer) => parts.push(part));
    document.on('end', () => resolve(new Uint8Array(Buffer.concat(parts))));
    document.on('error', reject);
  });
}
