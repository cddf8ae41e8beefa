import { answerApi } from '../answer-api';

type Context = { readonly params: Promise<{ path: string[] }> };

/** Every operation of the API; which one, and what it may, is decided in lib/api. */
async function handle(request: Request, { params }: Context): Promise<Response> {
  return answerApi(request, (await params).path);
}

export { handle as DELETE, handle as GET, handle as PATCH, handle as POST, handle as PUT };
