//! `plan`: a fair test before the first ball.

use crate::options::{Plan, in_canonical};
use crate::write::{Ends, complain, json, out, settings_of};
use files::Unread;
use session::plan::PlanRequest;
use telling::plan;
use text::Voice;

pub(crate) fn run(options: &Plan, voice: &Voice) -> Ends {
    let planned = request(options, voice).and_then(|request| {
        plan::plan(&request, voice).map_err(|refusal| {
            let place = refusal.place.clone();
            Unread::of(&place, refusal)
        })
    });
    match planned {
        Ok(plan) if options.json => out(&json(&plan)),
        Ok(plan) => {
            let words = plan.words;
            let sentences = [
                words.headline,
                words.order,
                words.power,
                words.beside,
                words.same,
                words.spread,
                words.looks,
                words.same_club,
            ];
            let all = sentences.into_iter().chain(plan.cautions);
            let lines: Vec<String> = all.filter(|line| !line.is_empty()).collect();
            out(&(lines.join("\n") + "\n"));
        }
        Err(unread) => {
            complain(&unread);
            return Ends::CannotAnswer;
        }
    }
    Ends::Answered
}

fn request(options: &Plan, voice: &Voice) -> Result<PlanRequest, Unread> {
    if let Some(path) = &options.request {
        return settings_of(path, voice);
    }
    let margin = options.margin.map(|margin| margin * in_canonical(&options.measure, voice));
    Ok(PlanRequest {
        margin,
        rounds: options.rounds,
        set: options.set,
        ..PlanRequest::of(options.builds.clone(), options.measure.as_str().into())
    })
}
