import { z } from 'zod';

export const regions = ['en-US', 'es-US', 'en-CA', 'es-MX', 'en-GB', 'es-ES'] as const;

export const preferencesInput = z.object({
  name: z.string('missing').trim().min(1, 'missing').max(120, 'too-long'),
  language: z.enum(['en', 'es'], 'not-an-option'),
  region: z.enum(regions, 'not-an-option'),
  massUnit: z.enum(['kg', 'lb'], 'not-an-option'),
  temperatureUnit: z.enum(['celsius', 'fahrenheit'], 'not-an-option'),
  volumeUnit: z.enum(['litre', 'gallon'], 'not-an-option'),
});
