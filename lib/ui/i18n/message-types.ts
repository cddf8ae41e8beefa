// Without this import the augmentation is silently ignored where only 'next-intl/server' is used.
import 'next-intl';
import type { Messages } from '@/lib/ui/messages/en';

declare module 'next-intl' {
  interface AppConfig {
    Messages: Messages;
  }
}
