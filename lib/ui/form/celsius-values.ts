/** What a temperature field holds for stored degrees Celsius. */
export function celsiusValues(name: string, celsius: number | null): Record<string, string> {
  return celsius === null ? {} : { [name]: String(celsius), [`${name}__unit`]: 'celsius' };
}
