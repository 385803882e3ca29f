import base from './vitest.config';
const b:any=base; for(const p of b.test.projects) p.test.setupFiles=['/tmp/y/suite-setup.ts'];
b.server={fs:{strict:false}};
export default b;
