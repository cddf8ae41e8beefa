import { problemSlugs } from '../door/answer';

const place = {
  pointer: { type: 'string', description: 'JSON pointer (RFC 6901) into what was sent, as a fragment.' },
  parameter: { type: 'string', description: 'Name of a query parameter.' },
  header: { type: 'string', description: 'Name of a header.' },
};
const told = {
  code: { type: 'string', description: 'Stable.' },
  detail: { type: 'string', description: 'What to do, in the language of the person behind the token.' },
};

/** Problem details as RFC 9457 has them. */
export const problemSchema = {
  type: 'object',
  required: ['type', 'title', 'status', 'detail'],
  properties: {
    type: {
      type: 'string',
      enum: Object.keys(problemSlugs).map((slug) => `tag:pinset,2026:problem/${slug}`),
    },
    title: { type: 'string' },
    status: { type: 'integer', enum: [...new Set(Object.values(problemSlugs))] },
    detail: { type: 'string' },
    errors: {
      type: 'array',
      items: { type: 'object', required: ['code', 'detail'], properties: { ...place, ...told } },
    },
    questions: {
      type: 'array',
      description: 'Possible but unlikely: send the same request again with these codes in `confirmed`.',
      items: {
        type: 'object',
        required: ['pointer', 'code', 'detail'],
        properties: { pointer: place.pointer, ...told },
      },
    },
  },
} as const;
