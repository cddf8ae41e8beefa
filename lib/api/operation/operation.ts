import type { z } from 'zod';
import type { Actor } from '@/lib/access/actor';
import type { ReadContext, WriteContext } from '@/lib/access/context';
import type { Result } from '@/lib/base/result';
import type { ApiBody } from '../body';

/** What an operation answers when all is well. */
export type Told = {
  readonly status: 200 | 201 | 202;
  readonly body: unknown;
  /** Of one record: its ETag. */
  readonly revision?: number;
  /** Path below the API's address of what was made. */
  readonly location?: string;
  /** Query strings of the neighbouring pages of a list. */
  readonly pages?: { readonly next?: string; readonly prev?: string };
  readonly retryAfterSeconds?: number;
};

export type Asked = {
  /** From the address; '' where it has none. */
  readonly id: string;
  readonly query: Readonly<Record<string, string | undefined>>;
  readonly now: Date;
};

/** What a write is made of besides: the input under the names of its command, and the revision of If-Match. */
export type AskedWrite = Asked & {
  readonly input: Readonly<Record<string, unknown>>;
  readonly revision: number | undefined;
};

type Named = {
  /** `operationId` of the document; also the key of its words. */
  readonly name: string;
  /** Below the API's address, with `{id}` where an id stands. */
  readonly path: string;
  readonly tag: string;
  readonly summary: string;
  readonly about?: string;
  /** Of the answer with status 200 or 201. */
  readonly answer: z.ZodType;
  /** Whose forms ask for the same: their labels name the fields in a refusal. */
  readonly area: string;
};

export type ReadOperation = Named & {
  readonly method: 'GET';
  readonly query: z.ZodObject;
  /** Whether it answers one record, or a list with neighbouring pages, or figures. */
  readonly of: 'one' | 'list' | 'figures';
  read(actor: Actor, asked: Asked): Promise<Result<Told>>;
};

export type WriteOperation = Named & {
  readonly method: 'POST' | 'PUT';
  readonly body: ApiBody;
  /** Whether the revision that was read must be named. */
  readonly ifMatch: boolean;
  readonly status: 200 | 201;
  write(context: WriteContext, asked: AskedWrite): Promise<Result<Told>>;
};

export type Operation = ReadOperation | WriteOperation;

export type ReadFrom = (context: ReadContext, asked: Asked) => Promise<Result<Told>>;
