import { run } from './run.ts';

self.onmessage = () => {
  run().then(
    (made) => self.postMessage({ made }),
    (error: unknown) => self.postMessage({ error: String(error) }),
  );
};
