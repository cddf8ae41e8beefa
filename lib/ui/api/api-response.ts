import type { Answered, Problem } from '@/lib/api/door/answer';
import type { AnswerReader } from '../entry/problem-response';
import { problemText } from '../form/problem-text';

/** Sentences that follow each other end in a mark; those of the catalogue for one field have none. */
const ended = (sentence: string) => (/[.?!…]$/.test(sentence) ? sentence : `${sentence}.`);

/** A problem as RFC 9457 has it: `errors` says where and what to do, `questions` what to confirm and how. */
export function problemBody(reader: AnswerReader, problem: Problem) {
  const { words } = reader;
  const text = problemText(reader, problem.area);
  const errors = problem.errors.map((error) => {
    const { pointer, parameter, header, code } = error;
    return {
      ...(pointer === undefined ? {} : { pointer: `#${pointer}` }),
      ...(parameter === undefined ? {} : { parameter }),
      ...(header === undefined ? {} : { header }),
      code,
      detail: text('errors', error),
    };
  });
  const questions = problem.questions.map((question) => ({
    pointer: `#${question.pointer}`,
    code: question.code,
    detail: text('questions', question),
  }));
  const how =
    questions.length === 0
      ? []
      : [words('api.confirm', { codes: JSON.stringify(questions.map(({ code }) => code)) })];
  return {
    type: `tag:pinset,2026:problem/${problem.slug}`,
    title: words(`api.problem.${problem.slug}`),
    status: problem.status,
    detail: [...errors, ...questions]
      .map(({ detail }) => detail)
      .concat(how)
      .map(ended)
      .join(' '),
    ...(errors.length === 0 ? {} : { errors }),
    ...(questions.length === 0 ? {} : { questions }),
  };
}

const always = { 'cache-control': 'private, no-store', vary: 'Authorization, Accept-Language' };

/** The answer to a script; sentences in the language of the person behind the token, or of Accept-Language. */
export function apiResponse(reader: AnswerReader, { answer }: Answered): Response {
  if (answer.kind === 'unchanged')
    return new Response(null, { status: 304, headers: { ...always, ...answer.headers } });
  if (answer.kind === 'told')
    return Response.json(answer.body, { status: answer.status, headers: { ...always, ...answer.headers } });
  const { problem } = answer;
  return Response.json(problemBody(reader, problem), {
    status: problem.status,
    headers: {
      ...always,
      'content-type': 'application/problem+json',
      'content-language': reader.language,
      ...problem.headers,
    },
  });
}
