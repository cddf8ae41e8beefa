import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import './globals.css';
import type { Metadata, Viewport } from 'next';
import { connection } from 'next/server';
import type { ReactNode } from 'react';
import { currentLanguage } from '@/lib/access/current-language';

export const metadata: Metadata = {
  applicationName: 'Pinset',
  icons: { icon: '/icons/mark.svg', apple: '/icons/180' },
};

export const viewport: Viewport = {
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#f7f5ef' },
    { media: '(prefers-color-scheme: dark)', color: '#16181b' },
  ],
};

/** Every page is made per request: the script nonce of the content security policy changes each time. */
export default async function RootLayout({ children }: { children: ReactNode }) {
  await connection();
  const { language } = await currentLanguage();
  return (
    <html lang={language}>
      <body>{children}</body>
    </html>
  );
}
