# Makes level-fits.json: squads with their levels by another implementation.
#
#     Rscript level-fits.R > level-fits.json
#
# With --times it tells instead, as JSON, in how many milliseconds (the middle of 25 runs) it fits the
# first of the squads and asks cor.test() for Kendall's test of one series, with that series and its p.
#
# R 4.2.2 with mgcv 1.8-41 (Debian bookworm: r-base-core, r-cran-mgcv).
#
# "alone": every tally is of one player, so that the model is a logistic regression with a ridge:
#   mgcv::gam of hits and misses on the design with `paraPen`, the penalty held at the prior's
#   precisions and the scale at the dispersion. Its Bayesian covariance is the inverse information.
# "together": pairs and trios, whose share is the mean of the players' shares: Newton's method with
#   the derivatives that R's own deriv3() finds of one tally's log-likelihood. The expected
#   information is that of hits and misses as they are expected (the likelihood is linear in them).
#
# A tally's consistency and its sd are those of the Beta with the drawn hits and misses added to the
# prior's. Outputs are sums of unknowns, put together here from what the model's page says of them.

suppressMessages(library(mgcv))

kinds <- c("groundstrokes", "volleys", "serves-and-returns")
sds <- list(kind = 1.5, drill = 0.35, player = 0.7, playerKind = 0.35, change = 0.05, changeKind = 0.04)

draw <- function(seed, players, tallies, sizes, prior, days) {
  set.seed(seed)
  skill <- rnorm(length(players), 0, 0.8)
  rise <- rnorm(length(players), 0, 0.1)
  lapply(seq_len(tallies), function(i) {
    kind <- sample(kinds, 1)
    drill <- paste0(substr(kind, 1, 1), sample(3, 1))
    who <- sample(seq_along(players), sizes[1 + (i %% length(sizes))])
    day <- sample(0:days, 1)
    p <- mean(plogis(prior$mu + skill[who] + rise[who] * day / 7 + rnorm(1, 0, 0.3)))
    shots <- 15 + rpois(1, 20)
    hits <- rbinom(1, shots, p)
    list(kind = kind, drill = drill, players = players[who], day = day, hits = hits, misses = shots - hits)
  })
}

# The unknowns: names, prior means and sds, and for each tally and player the values in the logit.
design <- function(tallies, mu, end) {
  names <- c(); means <- c(); spread <- c()
  add <- function(name, mean, sd) if (!(name %in% names)) {
    names <<- c(names, name); means <<- c(means, mean); spread <<- c(spread, sd)
  }
  for (t in tallies) {
    add(paste("kind", t$kind), mu, sds$kind)
    add(paste("drill", t$kind, t$drill), 0, sds$drill)
    for (p in t$players) {
      add(paste("level", p), 0, sds$player); add(paste("change", p), 0, sds$change)
      add(paste("level", p, t$kind), 0, sds$playerKind); add(paste("change", p, t$kind), 0, sds$changeKind)
    }
  }
  row <- function(t, p) {
    x <- setNames(numeric(length(names)), names); u <- (end - t$day) / 7
    x[c(paste("kind", t$kind), paste("drill", t$kind, t$drill), paste("level", p), paste("level", p, t$kind))] <- 1
    x[c(paste("change", p), paste("change", p, t$kind))] <- -u
    x
  }
  list(names = names, means = means, precision = 1 / spread^2,
    rows = lapply(tallies, function(t) t(sapply(t$players, function(p) row(t, p)))))
}

alone <- function(tallies, d, kappa) {
  X <- do.call(rbind, d$rows)
  h <- sapply(tallies, `[[`, "hits"); m <- sapply(tallies, `[[`, "misses")
  shift <- as.vector(X %*% d$means)
  # mgcv holds the penalty against the log-likelihood without the scale.
  fit <- gam(cbind(h, m) ~ X - 1 + offset(shift), family = binomial, scale = kappa,
    paraPen = list(X = list(diag(kappa * d$precision), sp = 1)), control = gam.control(epsilon = 1e-14, maxit = 500))
  list(w = d$means + as.vector(coef(fit)), V = fit$Vp)
}

# One tally's log-likelihood in the logits of its players.
slopes <- lapply(1:3, function(n) {
  etas <- paste0("e", 1:n)
  p <- paste0("(", paste0("1/(1+exp(-", etas, "))", collapse = "+"), ")/", n)
  q <- paste0("(", paste0("1/(1+exp(", etas, "))", collapse = "+"), ")/", n)
  deriv3(parse(text = paste0("h*log(", p, ")+m*log(", q, ")")), etas, c("h", "m", etas))
})

together <- function(tallies, d, kappa) {
  w <- d$means
  look <- function(w, expected) {
    g <- -d$precision * (w - d$means); H <- diag(d$precision)
    for (r in seq_along(tallies)) {
      t <- tallies[[r]]; X <- d$rows[[r]]; eta <- as.vector(X %*% w); n <- t$hits + t$misses
      p <- mean(plogis(eta))
      counts <- if (expected) c(n * p, n * (1 - p)) else c(t$hits, t$misses)
      at <- do.call(slopes[[length(eta)]], as.list(c(counts, eta)))
      g <- g + as.vector(t(X) %*% t(attr(at, "gradient"))) / kappa
      H <- H - t(X) %*% matrix(attr(at, "hessian"), length(eta)) %*% X / kappa
    }
    list(g = g, H = H)
  }
  for (i in 1:300) {
    at <- look(w, FALSE)
    # Where the curvature that is seen is no top's, the expected one leads on.
    if (min(eigen(at$H, symmetric = TRUE, only.values = TRUE)$values) <= 0) at$H <- look(w, TRUE)$H
    step <- solve(at$H, at$g)
    w <- w + step * min(1, 1 / max(abs(step)))
    if (max(abs(step)) < 1e-13) break
  }
  stopifnot(max(abs(step)) < 1e-12)
  list(w = w, V = solve(look(w, TRUE)$H))
}

number <- function(x) sprintf("%.17g", x)
text <- function(x) paste0("\"", x, "\"")
object <- function(...) { x <- c(...); paste0("{", paste0("\"", names(x), "\": ", x, collapse = ", "), "}") }
list_of <- function(x) paste0("[", paste(x, collapse = ", "), "]")

case <- function(name, seed, on_target, sizes, count, players, kappa, fitted) {
  prior <- if (on_target) list(mu = 0, a = 1, b = 1) else list(mu = 2, a = 4, b = 1)
  end <- 70
  tallies <- draw(seed, players, count, sizes, prior, end)
  d <- design(tallies, prior$mu, end)
  fit <- fitted(tallies, d, kappa)
  told <- function(c) {
    x <- setNames(numeric(length(d$names)), d$names); x[names(c)] <- c
    object(mean = number(sum(x * fit$w)), sd = number(sqrt(as.vector(x %*% fit$V %*% x))))
  }
  plus <- function(a, b) { all <- union(names(a), names(b)); sapply(all, function(n) sum(a[n], b[n], na.rm = TRUE)) }
  b <- min(4, (end - min(sapply(tallies, `[[`, "day"))) / 14)
  brings <- function(p, k, times, back) setNames(times * c(1, 1, -back, -back),
    c(paste("level", p), paste("level", p, k), paste("change", p), paste("change", p, k)))
  players_out <- c()
  for (k in kinds) {
    of_kind <- Filter(function(t) t$kind == k, tallies)
    in_kind <- sort(unique(unlist(lapply(of_kind, `[[`, "players"))))
    share <- table(sapply(of_kind, `[[`, "drill")) / length(of_kind)
    work <- c(setNames(1, paste("kind", k)), setNames(as.vector(share), paste("drill", k, names(share))))
    squad <- function(times, back) Reduce(plus, lapply(in_kind, function(p) brings(p, k, times / length(in_kind), back)))
    for (p in in_kind) {
      own <- if (on_target) brings(p, k, 1, 0) else plus(brings(p, k, 0.5, 0), squad(0.5, 0))
      other <- if (p == in_kind[1]) in_kind[2] else in_kind[1]
      players_out <- c(players_out, object(kind = text(k), player = text(p), other = text(other),
        level = told(plus(work, own)),
        difference = told(plus(brings(p, k, 1, b), squad(-1, b))),
        apart = told(plus(brings(p, k, 1, b), brings(other, k, -1, b))),
        week = told(setNames(c(1, 1), c(paste("change", p), paste("change", p, k))))))
    }
  }
  rows <- sapply(tallies, function(t) {
    a <- t$hits + prior$a; b <- t$misses + prior$b
    object(day = t$day, kind = text(t$kind), drill = text(t$drill), players = list_of(text(t$players)),
      consistency = number(a / (a + b)), sd = number(sqrt(a * b / (a + b)^2 / (a + b + 1))))
  })
  object(name = text(name), onTarget = tolower(as.character(on_target)), kappa = number(kappa), end = end,
    tallies = paste0("[\n      ", paste(rows, collapse = ",\n      "), "\n    ]"),
    expected = paste0("[\n      ", paste(players_out, collapse = ",\n      "), "\n    ]"))
}

five <- c("ann", "bob", "cat", "dan", "eve")

if ("--times" %in% commandArgs(TRUE)) {
  middle <- function(run) median(sapply(1:25, function(i) {
    began <- proc.time()[["elapsed"]]; for (again in 1:10) run()
    100 * (proc.time()[["elapsed"]] - began)
  }))
  prior <- list(mu = 0, a = 1, b = 1)
  tallies <- draw(11, five, 60, 1, prior, 70)
  d <- design(tallies, prior$mu, 70)
  set.seed(15)
  y <- round(rnorm(36, 1:36 / 20), 1)
  kendall <- function() cor.test(1:36, y, method = "kendall", exact = FALSE, continuity = TRUE)
  cat(object(fit = number(middle(function() alone(tallies, d, 1.3))), test = number(middle(kendall)),
    values = list_of(number(y)), p = number(kendall()$p.value)), "\n")
  quit()
}

cases <- c(
  case("each alone, on target (mgcv)", 11, TRUE, 1, 60, five, 1.3, alone),
  case("each alone, balls that come back (mgcv)", 12, FALSE, 1, 45, five[1:4], 1, alone),
  case("pairs and trios (deriv3)", 13, FALSE, c(2, 2, 3, 2), 50, five, 1.2, together),
  case("pairs, trios and singles of few tallies (deriv3)", 14, FALSE, c(3, 1, 2), 14, five, 1.6, together))
cat("{\n  \"source\": \"level-fits.R, ", R.version.string, ", mgcv ", as.character(packageVersion("mgcv")),
  "\",\n  \"cases\": [\n    ", paste(cases, collapse = ",\n    "), "\n  ]\n}\n", sep = "")
