/** Whether whoever sent this Accept header takes JSON (RFC 9110, 12.5.1); no header takes everything. */
export function acceptsJson(accept: string | null): boolean {
  if (accept === null || accept.trim() === '') return true;
  return accept.split(',').some((range) => {
    const [type = '', ...parameters] = range.split(';').map((part) => part.trim().toLowerCase());
    const weight = parameters.find((parameter) => parameter.startsWith('q='));
    if (weight !== undefined && Number(weight.slice(2)) === 0) return false;
    return ['*/*', 'application/*', 'application/json', 'application/problem+json'].includes(type);
  });
}
