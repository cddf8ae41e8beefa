import { type FitStart, startOfFit } from '../../stats/mixed/fit-start';
import type { Fit } from './fit';
import type { FitRequest } from './fit-request';

/** Where the searches of one question ended, by the model and how many like it the question had fitted before. */
export type Starts = Readonly<Record<string, FitStart>>;

/**
 * With fewer rows a likelihood may have two optima, one with a variance at 0 and one without, and a search ends at the one
 * nearer to its start: the same records would then have two answers. So small a fit takes no time to save.
 */
export const fewestRowsForStart = 2_000;

/**
 * Fits models from where the same ones ended last time, and collects where they end now. Two models that change places only
 * take longer.
 */
export function warmFit(fitModel: Fit, earlier: Starts): { readonly fit: Fit; readonly starts: Starts } {
  const starts: Record<string, FitStart> = {};
  const asked = new Map<string, number>();
  const started: Fit = async (request) => {
    const model = nameOf(request);
    const times = (asked.get(model) ?? 0) + 1;
    asked.set(model, times);
    const key = `${model} ${times}`;
    const answer = await fitModel(withStart(request, earlier[key]));
    if (answer.kind === 'answer') starts[key] = startOfFit(answer.fit);
    return answer;
  };
  return { fit: started, starts };
}

function nameOf({ kind, input }: FitRequest): string {
  return `${kind}: ${input.random.map(({ name }) => name).join(', ')}`;
}

function withStart(request: FitRequest, start: FitStart | undefined): FitRequest {
  const { input } = request;
  const rows = 'response' in input ? input.response.length : input.trials.length;
  if (start === undefined || rows < fewestRowsForStart) return request;
  return request.kind === 'linear'
    ? { ...request, input: { ...request.input, start } }
    : { ...request, input: { ...request.input, start } };
}
