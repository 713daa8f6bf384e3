decimal = ,
thousands = {" "}
least-digits-grouped = 10000
