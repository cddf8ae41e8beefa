/** The code of a system or PostgreSQL error ("ECONNREFUSED", "28P01"), or undefined where there is none. */
export const errorCode = (error: unknown): string | undefined =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : undefined;
