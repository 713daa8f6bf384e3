import json, numpy as np, scipy
from scipy.stats import norm
from scipy.optimize import brentq
def looks(times,alpha,m):
    spend=lambda t:4*norm.sf(norm.isf(alpha/4)/np.sqrt(t))
    out=[];prev=0;sp=0;w=None
    x,wt=np.polynomial.legendre.leggauss(m)
    for t in times:
        sd=np.sqrt(t-prev)
        if w is None: ex=lambda c:2*norm.sf(c/sd)
        else: ex=lambda c:np.sum(mass*(norm.sf((c-w)/sd)+norm.sf((c+w)/sd)))
        d=spend(t)-sp
        c=brentq(lambda c:np.log(max(ex(c),1e-300)/d),1e-9,12,xtol=1e-15,rtol=1e-14)
        out.append(c/np.sqrt(t))
        cc=min(c,14*np.sqrt(t)); nw=x*cc
        dens=norm.pdf(nw/sd)/sd if w is None else (norm.pdf((nw[:,None]-w)/sd)@mass)/sd
        w,mass=nw,wt*cc*dens
        prev=t;sp=spend(t)
    return out
cases=[]
def add(id,times,alpha,ex):
    z=looks(times,alpha,400); z2=looks(times,alpha,700)
    agree=max(abs(a/b-1) for a,b in zip(z,z2))
    cases.append(dict(id=id,exercises=ex,source="computed (numpy, scipy) from the definition of Lan and DeMets (1983) with the O'Brien-Fleming-type spending function 4[1-Phi(z_{1-alpha/4}/sqrt t)]",kind="computed-by-reference-library",
      how="tests/reference/stats/17_planned_looks.py: density of the path on 400 Gauss-Legendre nodes over the whole of (-c, c), scipy norm, brentq; once more with 700 nodes",
      input=dict(alpha=alpha,times=times),expected=dict(z=z,nominal_p=[2*norm.sf(v) for v in z]),tolerance=dict(rel=1e-9),
      verified_by=[dict(library="the same with 700 nodes",keys=["z"],max_relative_difference=agree)]))
add("five_equal",[.2,.4,.6,.8,1.0],.05,"the published five-look boundary 4.877 3.357 2.680 2.290 2.031")
for K in (2,3,5,6,8,10,12): add(f"rounds_{K}_05",[j/K for j in range(2,K+1)],.05,"looks after rounds 2..K, for 'different'")
for K in (3,6,12): add(f"rounds_{K}_10",[j/K for j in range(2,K+1)],.10,"looks after rounds 2..K, for the interval of 'the same'")
add("uneven",[.15,.2,.55,.6,.97,1.0],.05,"looks as they came, not as planned")
add("many_40",[j/40 for j in range(2,41)],.05,"many looks, first boundary beyond 9 SD")
add("no_last_look",[.3,.7],.01,"stopped before all information is in")
json.dump(dict(method="planned looks, Lan-DeMets O'Brien-Fleming-type",conventions=dict(alpha="overall, two-sided",times="share of the planned information at each look",z="boundary for |z|",nominal_p="2(1-Phi(z))"),library_versions=dict(numpy=np.__version__,scipy=scipy.__version__),cases=cases),open("17_planned_looks.json","w"),indent=1)
for c in cases: print(c['id'],c['verified_by'][0]['max_relative_difference'],c['expected']['z'][:2])
