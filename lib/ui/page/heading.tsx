import { getTranslations } from 'next-intl/server';
import { KeptCodes } from './kept-codes';

/** The h1 of a page, a question or a thing, and with it the page's title. Forms bring their own heading. */
export async function Heading({ text }: { text: string }) {
  const t = await getTranslations('common');
  return (
    <>
      <title>{`${text} – ${t('product')}`}</title>
      <h1>
        <KeptCodes text={text} />
      </h1>
    </>
  );
}
