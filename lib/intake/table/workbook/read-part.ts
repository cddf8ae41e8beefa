import { SaxesParser } from 'saxes';

export type PartEvents = {
  readonly open?: (name: string, attributes: Readonly<Record<string, string>>) => void;
  readonly text?: (text: string) => void;
  readonly close?: (name: string) => void;
};

/** A name without the prefix of its namespace: a workbook may give its own any prefix. */
export function localName(name: string): string {
  return name.slice(name.indexOf(':') + 1);
}

/** Tells the elements of a part of a workbook as its bytes come; throws where it is no well-formed XML. */
export async function readPart(bytes: AsyncIterable<Uint8Array>, events: PartEvents): Promise<void> {
  const parser = new SaxesParser({ xmlns: false, position: false });
  const { open, text, close } = events;
  if (open) parser.on('opentag', ({ name, attributes }) => open(localName(name), attributes));
  if (text) {
    parser.on('text', text);
    parser.on('cdata', text);
  }
  if (close) parser.on('closetag', ({ name }) => close(localName(name)));
  let decoder: TextDecoder | undefined;
  for await (const part of bytes) {
    decoder ??= new TextDecoder(part[0] === 0xff && part[1] === 0xfe ? 'utf-16le' : 'utf-8');
    parser.write(decoder.decode(part, { stream: true }));
  }
  parser.close();
}
