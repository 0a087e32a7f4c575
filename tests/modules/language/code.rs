//! What the code puts into each message, read from its text.
//!
//! A message may be finished by `.with` where it stands, after the `match` or `if` that chose
//! it, after the `let` that it is bound by, or in a closure that takes it. A `.with` on
//! anything else cannot be told: finish the message where it is chosen.

use std::collections::{BTreeSet, HashMap};

use syn::parse::{Parse, ParseStream};
use syn::punctuated::Punctuated;
use syn::visit::{self, Visit};
use syn::{Block, Expr, Ident, Lit, LitStr, Macro, Pat, Stmt, Token};

/// The name of a message in the code.
#[derive(Debug, Clone)]
pub enum Name {
    Whole(String),
    /// `format!("month-{number}")`: all that begin so.
    Begun(String),
}

impl Name {
    pub fn whole(&self) -> Option<&String> {
        match self {
            Name::Whole(name) => Some(name),
            Name::Begun(_) => None,
        }
    }
}

/// A message with what was put into it.
#[derive(Debug, Clone)]
pub struct Said {
    pub name: Name,
    pub arguments: BTreeSet<String>,
}

/// The messages that an expression may come to.
#[derive(Debug, Clone, Default)]
struct Flow {
    said: Vec<Said>,
    /// It may come to something else, too.
    is_open: bool,
}

impl Flow {
    fn open() -> Self {
        Flow {
            said: Vec::new(),
            is_open: true,
        }
    }

    fn join(mut self, other: Flow) -> Self {
        self.said.extend(other.said);
        self.is_open |= other.is_open;
        self
    }
}

/// What a name of the code stands for.
#[derive(Clone)]
enum Bound {
    Message(Flow),
    /// A closure that takes one message: its parameter and its body.
    Finisher(String, Expr),
}

/// `message!("name", first = …, second = …)`.
struct MessageMacro {
    name: String,
    arguments: Vec<(String, Expr)>,
}

impl Parse for MessageMacro {
    fn parse(input: ParseStream) -> syn::Result<Self> {
        let name: LitStr = input.parse()?;
        let mut arguments = Vec::new();
        while input.parse::<Option<Token![,]>>()?.is_some() && !input.is_empty() {
            let argument: Ident = input.parse()?;
            input.parse::<Token![=]>()?;
            arguments.push((argument.to_string(), input.parse()?));
        }
        Ok(MessageMacro {
            name: name.value(),
            arguments,
        })
    }
}

/// Reads a file of code.
#[derive(Default)]
pub struct Reader {
    bound: HashMap<String, Bound>,
    pub finished: Vec<Said>,
    /// What cannot be told from the code alone.
    pub untold: Vec<String>,
}

impl Reader {
    fn finish(&mut self, expression: &Expr) {
        let flow = self.follow(expression);
        self.finished.extend(flow.said);
    }

    /// Something with names of its own, which are forgotten after it.
    fn within<T>(&mut self, names: &[String], read: impl FnOnce(&mut Self) -> T) -> T {
        let outside = self.bound.clone();
        self.bound.retain(|name, _| !names.contains(name));
        let result = read(self);
        self.bound = outside;
        result
    }

    fn follow(&mut self, expression: &Expr) -> Flow {
        match expression {
            Expr::Macro(found) => self.follow_macro(&found.mac),
            Expr::Paren(inner) => self.follow(&inner.expr),
            Expr::Reference(inner) => self.follow(&inner.expr),
            Expr::Block(inner) => self.follow_block(&inner.block),
            Expr::Path(path) => match path.path.get_ident().map(ToString::to_string) {
                Some(name) => match self.bound.get(&name) {
                    Some(Bound::Message(flow)) => flow.clone(),
                    _ => Flow::open(),
                },
                None => Flow::open(),
            },
            Expr::If(choice) => {
                let names = names_bound(&choice.cond);
                self.finish(&choice.cond);
                let then = self.within(&names, |reader| reader.follow_block(&choice.then_branch));
                match &choice.else_branch {
                    Some((_, otherwise)) => then.join(self.follow(otherwise)),
                    None => then,
                }
            }
            Expr::Match(choice) => {
                self.finish(&choice.expr);
                let arms = choice.arms.iter().map(|arm| {
                    self.within(&names_of(&arm.pat), |reader| {
                        if let Some((_, guard)) = &arm.guard {
                            reader.finish(guard);
                        }
                        reader.follow(&arm.body)
                    })
                });
                arms.fold(Flow::default(), Flow::join)
            }
            Expr::Return(_) | Expr::Break(_) | Expr::Continue(_) => {
                visit::visit_expr(self, expression);
                Flow::default()
            }
            Expr::MethodCall(call) => match (call.method == "with", call.args.first()) {
                (true, Some(Expr::Lit(literal))) if call.args.len() == 2 => {
                    self.finish(&call.args[1]);
                    let flow = self.follow(&call.receiver);
                    self.with(flow, &literal.lit)
                }
                _ => {
                    visit::visit_expr(self, expression);
                    Flow::open()
                }
            },
            Expr::Call(call) => self.follow_call(call),
            Expr::Closure(closure) => {
                let names: Vec<String> = closure.inputs.iter().flat_map(names_of).collect();
                self.within(&names, |reader| reader.finish(&closure.body));
                Flow::open()
            }
            other => {
                visit::visit_expr(self, other);
                Flow::open()
            }
        }
    }

    fn with(&mut self, mut flow: Flow, argument: &Lit) -> Flow {
        let Lit::Str(argument) = argument else {
            return flow;
        };
        if flow.is_open || flow.said.is_empty() {
            let chosen: Vec<&Name> = flow.said.iter().map(|said| &said.name).collect();
            self.untold
                .push(format!(".with(\"{}\") on {chosen:?}", argument.value()));
        }
        for said in &mut flow.said {
            let is_new = said.arguments.insert(argument.value());
            if !is_new {
                self.untold
                    .push(format!("{:?}: twice {}", said.name, argument.value()));
            }
        }
        flow
    }

    fn follow_macro(&mut self, found: &Macro) -> Flow {
        let Some(name) = found.path.segments.last() else {
            return Flow::open();
        };
        if name.ident == "message" {
            let said: MessageMacro = found.parse_body().unwrap();
            for (_, expression) in &said.arguments {
                self.finish(expression);
            }
            let arguments = said.arguments.into_iter().map(|(name, _)| name);
            return Flow {
                said: vec![Said {
                    name: Name::Whole(said.name),
                    arguments: arguments.collect(),
                }],
                is_open: false,
            };
        }
        match found.parse_body_with(Punctuated::<Expr, Token![,]>::parse_terminated) {
            Ok(expressions) => expressions.iter().for_each(|inner| self.finish(inner)),
            Err(_) => {
                let text = found.tokens.to_string();
                if text.contains("message !") || text.contains("Message :: new") {
                    self.untold.push(format!("{}!({text})", name.ident));
                }
            }
        }
        Flow {
            is_open: name.ident != "unreachable",
            ..Flow::default()
        }
    }

    fn follow_call(&mut self, call: &syn::ExprCall) -> Flow {
        if let Expr::Path(callee) = call.func.as_ref() {
            let path: Vec<String> = callee
                .path
                .segments
                .iter()
                .map(|part| part.ident.to_string())
                .collect();
            if path == ["Message", "new"] {
                self.finish(&call.args[0]);
                let mut names = Vec::new();
                let is_told = gather_names(&call.args[0], &mut names);
                let said = names.into_iter().map(|name| Said {
                    name,
                    arguments: BTreeSet::new(),
                });
                return Flow {
                    said: said.collect(),
                    is_open: !is_told,
                };
            }
            if let ([name], [given]) = (path.as_slice(), Vec::from_iter(&call.args).as_slice())
                && let Some(Bound::Finisher(parameter, body)) = self.bound.get(name).cloned()
            {
                let flow = self.follow(given);
                return self.within(&[], |reader| {
                    reader.bound.insert(parameter, Bound::Message(flow));
                    reader.follow(&body)
                });
            }
        }
        visit::visit_expr_call(self, call);
        Flow::open()
    }

    fn follow_block(&mut self, block: &Block) -> Flow {
        self.within(&[], |reader| {
            let mut result = Flow::open();
            for statement in &block.stmts {
                match statement {
                    Stmt::Local(local) => reader.bind(local),
                    Stmt::Expr(last, None) => result = reader.follow(last),
                    Stmt::Expr(expression, Some(_)) => {
                        let flow = reader.follow(expression);
                        result = Flow {
                            is_open: flow.is_open,
                            ..Flow::default()
                        };
                        reader.finished.extend(flow.said);
                    }
                    Stmt::Macro(found) => result = reader.follow_macro(&found.mac),
                    Stmt::Item(item) => reader.visit_item(item),
                }
            }
            result
        })
    }

    /// `let name = …`.
    fn bind(&mut self, local: &syn::Local) {
        let (names, init) = (names_of(&local.pat), &local.init);
        let Some(init) = init else {
            return self.bound.retain(|name, _| !names.contains(name));
        };
        let bound = match (init.expr.as_ref(), &local.pat) {
            (Expr::Closure(closure), Pat::Ident(_)) if takes_a_message(closure) => {
                let parameter = names_of(&closure.inputs[0]).remove(0);
                Some(Bound::Finisher(parameter, closure.body.as_ref().clone()))
            }
            (expression, Pat::Ident(_)) => {
                let flow = self.follow(expression);
                (!flow.said.is_empty()).then_some(Bound::Message(flow))
            }
            (expression, _) => {
                self.finish(expression);
                None
            }
        };
        if let Some((_, otherwise)) = &init.diverge {
            self.finish(otherwise);
        }
        self.bound.retain(|name, _| !names.contains(name));
        if let (Some(bound), [name]) = (bound, names.as_slice()) {
            self.bound.insert(name.clone(), bound);
        }
    }
}

impl<'ast> Visit<'ast> for Reader {
    fn visit_expr(&mut self, expression: &'ast Expr) {
        self.finish(expression);
    }

    fn visit_block(&mut self, block: &'ast Block) {
        let flow = self.follow_block(block);
        self.finished.extend(flow.said);
    }

    fn visit_macro(&mut self, found: &'ast Macro) {
        if !found.path.is_ident("macro_rules") {
            let flow = self.follow_macro(found);
            self.finished.extend(flow.said);
        }
    }
}

/// `|said: Message| …`.
fn takes_a_message(closure: &syn::ExprClosure) -> bool {
    match Vec::from_iter(&closure.inputs).as_slice() {
        [Pat::Type(parameter)] => {
            matches!(parameter.ty.as_ref(), syn::Type::Path(found) if found.path.is_ident("Message"))
        }
        _ => false,
    }
}

/// The names in what is given to `Message::new`; whether that is all it may be.
fn gather_names(expression: &Expr, names: &mut Vec<Name>) -> bool {
    match expression {
        Expr::Lit(literal) => match &literal.lit {
            Lit::Str(name) => {
                names.push(Name::Whole(name.value()));
                true
            }
            _ => false,
        },
        Expr::Macro(found) if found.mac.path.is_ident("format") => {
            let text = found.mac.tokens.to_string();
            let begun = text.trim_start_matches('"').split('{').next();
            names.extend(begun.map(|begun| Name::Begun(begun.to_owned())));
            true
        }
        Expr::Match(choice) => {
            let mut bodies = choice.arms.iter().map(|arm| &arm.body);
            bodies.all(|body| gather_names(body, names))
        }
        _ => false,
    }
}

/// The names that patterns give.
#[derive(Default)]
struct Names(Vec<String>);

impl Visit<'_> for Names {
    fn visit_pat_ident(&mut self, pattern: &syn::PatIdent) {
        self.0.push(pattern.ident.to_string());
        visit::visit_pat_ident(self, pattern);
    }
}

fn names_of(pattern: &Pat) -> Vec<String> {
    let mut names = Names::default();
    names.visit_pat(pattern);
    names.0
}

/// The names that `if let` gives.
fn names_bound(condition: &Expr) -> Vec<String> {
    let mut names = Names::default();
    names.visit_expr(condition);
    names.0
}

/// What the code of one file says.
pub fn read(code: &str) -> Reader {
    let mut reader = Reader::default();
    reader.visit_file(&syn::parse_file(code).unwrap());
    reader
}
