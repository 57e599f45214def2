s=open('tests/engine/oracle.test.ts').read()
a=s.index('/** Runs with every kind of protection'); b=s.index('const FAULT_STATUS')
body=s[a:b]
g=s[s.index('/** A run is within limits only where'):s.index('function expectSame')]
hdr=s[:s.index('const TOLERANCE')].replace("from 'vitest'","from '/tmp/i10b-out/fake.ts'").replace("'../../","'/work/i10b/").replace("'../","'/work/i10b/tests/").replace("'./","'/work/i10b/tests/engine/")
open('/work/i10b/tests/tmp-prop.ts','w').write(hdr+g+body)
