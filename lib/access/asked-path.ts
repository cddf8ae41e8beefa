import 'server-only';
import { headers } from 'next/headers';
import { askedPathHeader } from './next-path';

/** The path that this request asked for, if the proxy saw it. */
export async function askedPath(): Promise<string | null> {
  return (await headers()).get(askedPathHeader);
}
