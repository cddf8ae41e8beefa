import { getTranslations } from 'next-intl/server';
import { KeptCodes } from './kept-codes';

type Props = {
  readonly text: string;
  /** True where the page tells of an error of its own filters, so that its title does too. */
  readonly failed?: boolean;
};

/** The h1 of a page, a question or a thing, and with it the page's title. Forms bring their own heading. */
export async function Heading({ text, failed = false }: Props) {
  const t = await getTranslations('common');
  return (
    <>
      <title>{`${failed ? `${t('errorPrefix')} ` : ''}${text} – ${t('product')}`}</title>
      <h1>
        <KeptCodes text={text} />
      </h1>
    </>
  );
}
