// Loaded into the application's process by the command that starts it. It tells the command when it listens,
// and ends with it: killed hard, the command could not stop it, and it would hold its port for ever.
import { Server } from 'node:net';

const listen = Server.prototype.listen;
/** @this {Server} @param {any[]} args */
Server.prototype.listen = function listenAndTell(...args) {
  this.once('listening', () => process.send?.({ listening: this.address() }));
  return listen.apply(this, /** @type {any} */ (args));
};

process.once('disconnect', () => {
  setTimeout(() => process.exit(0), 3_000).unref();
  process.kill(process.pid, 'SIGTERM');
});
