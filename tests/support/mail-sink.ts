import { createServer, type Socket } from 'node:net';
import { onTestFinished } from 'vitest';

/** A letter as the server was handed it: the envelope and the whole text. */
export type SunkLetter = { readonly from: string; readonly to: string; readonly data: string };

/**
 * A mail server of this test that takes letters and sends none on (the commands of RFC 5321 that a client needs). With
 * `refuse` it takes no recipient.
 */
export async function mailSink({ refuse = false } = {}) {
  const letters: SunkLetter[] = [];
  const server = createServer((socket) => serve(socket, letters, refuse));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  onTestFinished(() => new Promise<void>((resolve) => server.close(() => resolve())));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('the sink listens on a port');
  return { letters, url: `smtp://127.0.0.1:${address.port}` };
}

function serve(socket: Socket, letters: SunkLetter[], refuse: boolean): void {
  let [unread, from, to, inData] = ['', '', '', false];
  const say = (line: string) => socket.write(`${line}\r\n`);
  socket.setEncoding('utf8');
  socket.on('error', () => socket.destroy());
  say('220 sink');
  socket.on('data', (chunk: string) => {
    unread += chunk;
    for (;;) {
      const end = unread.indexOf(inData ? '\r\n.\r\n' : '\r\n');
      if (end < 0) return;
      const line = unread.slice(0, end);
      unread = unread.slice(end + (inData ? 5 : 2));
      if (inData) {
        letters.push({ from, to, data: line });
        inData = false;
        say('250 taken');
      } else if (/^(EHLO|HELO|RSET|NOOP)/i.test(line)) say('250 sink');
      else if (/^MAIL FROM:<(.*?)>/i.test(line)) {
        from = /<(.*?)>/.exec(line)?.[1] ?? '';
        say('250 ok');
      } else if (/^RCPT TO/i.test(line)) {
        to = /<(.*?)>/.exec(line)?.[1] ?? '';
        say(refuse ? '550 no such box' : '250 ok');
      } else if (/^DATA/i.test(line)) {
        inData = true;
        say('354 go on');
      } else if (/^QUIT/i.test(line)) {
        say('221 bye');
        socket.end();
      } else say('502 unknown');
    }
  });
}
