import type { TypedMass } from './read-net-mass';

const key = 'pinset.tare';

/** The crate subtracted last on this phone; empty when none was, or where the browser keeps nothing. */
export function rememberedTare(): TypedMass | undefined {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? 'null');
    if (typeof kept !== 'object' || kept === null) return undefined;
    const { text, unit } = kept as Partial<TypedMass>;
    return typeof text === 'string' && typeof unit === 'string' && text.length < 40
      ? { text, unit }
      : undefined;
  } catch {
    return undefined;
  }
}

/** Keeps the crate for the next harvest; an empty one forgets it. */
export function rememberTare(tare: TypedMass): void {
  try {
    if (tare.text === '') localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(tare));
  } catch {
    // A browser that keeps nothing asks for the crate each time.
  }
}
